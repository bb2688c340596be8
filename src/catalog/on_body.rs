//! Where the tape goes on a body, drawn.

use crate::fit::BodyPlace;
use crate::specimen::{OnBody, Picture};

/// A drawing for each place of [`BODY_MEASURES`](crate::fit::BODY_MEASURES).
pub static BODY_PICTURES: [(BodyPlace, Picture); 13] = [
    (BodyPlace::Height, Picture::OnBody(OnBody::Height)),
    (BodyPlace::Neck, Picture::OnBody(OnBody::Neck)),
    (BodyPlace::Shoulders, Picture::OnBody(OnBody::Shoulders)),
    (BodyPlace::Chest, Picture::OnBody(OnBody::Chest)),
    (BodyPlace::Bust, Picture::OnBody(OnBody::Bust)),
    (BodyPlace::Waist, Picture::OnBody(OnBody::Waist)),
    (BodyPlace::Band, Picture::OnBody(OnBody::Band)),
    (BodyPlace::Hip, Picture::OnBody(OnBody::Hip)),
    (BodyPlace::Thigh, Picture::OnBody(OnBody::Thigh)),
    (BodyPlace::InsideLeg, Picture::OnBody(OnBody::InsideLeg)),
    (BodyPlace::Arm, Picture::OnBody(OnBody::Arm)),
    (BodyPlace::Back, Picture::OnBody(OnBody::BackLength)),
    (BodyPlace::UpperArm, Picture::OnBody(OnBody::UpperArm)),
];
