//! Usual cautions that families share. They are reminders, not medical or legal advice.

/// Rules of the place and licensed work go before anything said here.
pub const LOCAL_RULES: &str =
    "Local rules, the shop’s wishes and licensed practice come first. Nothing here is medical or legal advice.";
/// Handling goods that belong to someone else.
pub const ASK_FIRST: &str = "Ask before you turn out, rub, stretch or measure goods that are not yours. Do not wet or cut them.";
/// Sharp metal left in new goods; also said beside each check that puts a hand in blind.
pub const NEEDLES: &str = "New goods can hold pins or bits of broken needle. Feel hems, bands and linings from outside before you slide a hand or foot in.";
/// Threads and seams under force.
pub const NO_PULLING: &str =
    "Do not pull thread ends or strain seams: a chain stitch can run out whole, and the goods may not be yours.";
/// Flame tests belong in a laboratory.
pub const NO_FLAME: &str = "Never burn a thread to find the fibre. That belongs in a laboratory.";
/// Nickel in metal parts. Limits: `sources::REACH_27`.
pub const NICKEL: &str = "Nickel in buttons, rivets and zips can cause a rash. If you are sensitive, keep metal off the skin. Limits depend on local rules.";
/// Loose dye of raw cloth.
pub const INDIGO: &str =
    "Raw indigo marks skin, shoes and pale seats. Wash your hands afterwards and wash the jeans by themselves.";
/// What cleaning leaves in a jacket. Common practice, no source.
pub const SOLVENT: &str =
    "A jacket that smells of dry cleaning still gives off solvent. Hang it in the open before you wear or store it.";
/// Wool and hair against the skin, and in the eyes.
pub const WOOL: &str = "Wool, hair and mothproofing can irritate skin and eyes. If yours are sensitive, keep the cloth off them.";
/// Cords and small parts. Rules: `sources::CFR_1120`, `sources::EN_14682`, `sources::CFR_1501`.
pub const CHILDREN: &str = "On children’s clothes, cords at neck, waist or hem can catch, and loose buttons or studs can be swallowed. Local rules set limits.";
