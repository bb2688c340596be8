//! The program: opens the door to the app.

mod app;

use app::{Entrance, EntranceProps};

fn main() {
    // A panic must not leave a person with a screen that no longer answers and no word about it. The renderer installs a hook of its
    // own unless it is given one.
    yew::set_custom_panic_hook(Box::new(|info| app::say_crash(&info.to_string(), &app::last_read())));
    wasm_bindgen_futures::spawn_local(async {
        // The program was made ready just now, in this same turn.
        app::breath().await;
        // Without its words the entrance speaks English.
        app::bring_entrance().await;
        // What index.html shows stays until there is something better: on a first visit the entrance, later the house.
        let is_here = !app::is_first_visit();
        if !is_here || app::bring_house().await {
            yew::Renderer::<Entrance>::with_root_and_props(app::mount(), EntranceProps { is_here }).render();
        }
    });
}
