//! The program: opens the door to the app.

mod app;

fn main() {
    // A panic must not leave a person with a screen that no longer answers and no word about it. The renderer installs a hook of its
    // own unless it is given one.
    yew::set_custom_panic_hook(Box::new(|info| app::say_crash(&info.to_string())));
    yew::Renderer::<app::App>::with_root(app::mount()).render();
}
