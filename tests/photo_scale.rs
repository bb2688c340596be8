//! Scale in pictures against general libraries (OpenCV, numpy: `tests/vectors/photo_scale.py`), against drawn photographs with a known truth
//! (`tests/images`), and against rulers, cards and coins drawn here through a known camera.

use std::f64::consts::TAU;

use photo::{Cause, Graduation, Object, Part, Plane, Point, Raster, Scale, ScaleFault, face, scale};
use serde_json::Value;

fn at(x: f64, y: f64) -> Point {
    Point { x, y }
}

fn number(value: &Value) -> f64 {
    value.as_f64().expect("a number")
}

fn point(value: &Value) -> Point {
    at(number(&value[0]), number(&value[1]))
}

fn points(value: &Value) -> Vec<Point> {
    value.as_array().expect("places").iter().map(point).collect()
}

fn vectors() -> Value {
    serde_json::from_str(include_str!("vectors/photo_scale.json")).expect("vectors")
}

fn rows(name: &str) -> Vec<Value> {
    let rows = vectors()[name].as_array().expect("rows").clone();
    assert!(!rows.is_empty());
    rows
}

/// A picture in memory.
struct Picture {
    width: usize,
    height: usize,
    rgba: Vec<u8>,
}

impl Picture {
    fn raster(&self) -> Raster<'_> {
        Raster::new(self.width, self.height, &self.rgba).expect("a picture")
    }

    fn grey(width: usize, height: usize) -> Picture {
        Picture { width, height, rgba: vec![128; width * height * 4] }
    }

    fn open(name: &str) -> Picture {
        let file = format!("{}/tests/images/{name}", env!("CARGO_MANIFEST_DIR"));
        let image = image::open(file).expect("a picture").to_rgba8();
        let (width, height) = (image.width() as usize, image.height() as usize);
        Picture { width, height, rgba: image.into_raw() }
    }

    /// What lies on a plane, seen through a camera: 3 by 3 rays a pixel.
    fn drawn(camera: &Camera, grey: impl Fn(Point) -> f64) -> Picture {
        let (width, height) = (960, 720);
        let mut rgba = Vec::with_capacity(width * height * 4);
        for y in 0..height {
            for x in 0..width {
                let mut sum = 0.0;
                for ray in 0..9 {
                    let (dx, dy) = (f64::from(ray % 3 - 1) / 3.0, f64::from(ray / 3 - 1) / 3.0);
                    sum += grey(camera.plane.on_cloth(at(x as f64 + dx, y as f64 + dy)));
                }
                let value = (sum / 9.0).clamp(0.0, 255.0) as u8;
                rgba.extend([value, value, value, 255]);
            }
        }
        Picture { width, height, rgba }
    }
}

/// A camera 130 mm over the cloth, tilted by degrees about both axes; its middle sees (40, 20) mm.
struct Camera {
    plane: Plane,
}

impl Camera {
    fn tilted(right: f64, down: f64, turned: f64) -> Camera {
        let (focal, far) = (1000.0, 130.0);
        let ((sa, ca), (sb, cb), (st, ct)) =
            (right.to_radians().sin_cos(), down.to_radians().sin_cos(), turned.to_radians().sin_cos());
        let seen = |place: Point| {
            let (x, y) = (place.x - 40.0, place.y - 20.0);
            let (x, y) = (ct * x - st * y, st * x + ct * y);
            let (x, z) = (ca * x, sa * x);
            let (y, z) = (cb * y - sb * z, sb * y + cb * z);
            at(480.0 + focal * x / (far + z), 360.0 + focal * y / (far + z))
        };
        let places = [at(0.0, 0.0), at(80.0, 0.0), at(80.0, 40.0), at(0.0, 40.0)];
        Camera { plane: Plane::through(places.map(seen), places).expect("a plane") }
    }

    fn sees(&self, x: f64, y: f64) -> Point {
        self.plane.in_picture(at(x, y))
    }

    /// How far the scale found is off for lengths along the ruler at a place, as a share.
    fn off(&self, scale: &Scale, x: f64, y: f64) -> f64 {
        let (here, there) = (self.sees(x, y), self.sees(x + 1.0, y));
        (scale.plane.px_per_mm(here, there) / self.plane.px_per_mm(here, there) - 1.0).abs()
    }
}

/// A ruler whose edge lies along y = 10 mm and whose body below; dark lines on light, or the other way about.
fn ruler(place: Point, step: f64, light: f64, dark: f64) -> f64 {
    let down = place.y - 10.0;
    if down < 0.0 {
        // Cloth with a twill of its own.
        return 90.0 + 30.0 * (TAU * (place.x + 0.8 * place.y) / 0.9).sin();
    }
    let number = (place.x / step).round();
    let off = (place.x - number * step).abs();
    let each = |by: f64| (number / by).round() * by == number;
    let long = if step == 1.0 {
        if each(10.0) {
            5.5
        } else if each(5.0) {
            4.2
        } else {
            3.0
        }
    } else if each(16.0) {
        6.0
    } else if each(4.0) {
        4.5
    } else {
        3.0
    };
    if off < 0.1 && down < long { dark } else { light }
}

/// The object's own face: what is drawn here lies flat in one plane with it.
fn read(picture: &Picture, object: &Object) -> Scale {
    face(&picture.raster(), object).expect("a scale")
}

fn share(parts: &[Part], from: Cause) -> f64 {
    parts.iter().filter(|part| part.from == from).map(|part| part.share).sum()
}

/// OpenCV refines by steps and stops at a millionth; a tenth of a micrometre holds.
#[test]
fn four_corners_give_the_homography_that_opencv_gives() {
    for row in rows("homography") {
        let corners: [Point; 4] = points(&row["corners"]).try_into().expect("four");
        let card = [at(0.0, 0.0), at(85.6, 0.0), at(85.6, 53.98), at(0.0, 53.98)];
        let plane = Plane::through(corners, card).expect("a plane");
        for (pixel, mm) in points(&row["pixels"]).into_iter().zip(points(&row["mm"])) {
            assert!(plane.on_cloth(pixel).distance(mm) < 1e-4, "{pixel:?}: {:?}, OpenCV {mm:?}", plane.on_cloth(pixel));
            assert!(plane.in_picture(mm).distance(pixel) < 1e-3);
        }
    }
}

#[test]
fn marks_on_a_rim_give_the_ellipse_that_opencv_gives() {
    for row in rows("ellipse") {
        // Nothing is in the picture, so the ellipse of the marks stands.
        let found = read(&Picture::grey(640, 480), &Object::Coin(points(&row["points"]), 23.25)).found;
        let (long, short) = (found[0].distance(found[12]) / 2.0, found[6].distance(found[18]) / 2.0);
        let middle = at((found[0].x + found[12].x) / 2.0, (found[0].y + found[12].y) / 2.0);
        assert!(middle.distance(point(&row["middle"])) < 0.05, "{middle:?} {row}");
        assert!((long - number(&row["long"])).abs() < 0.05, "{long} {row}");
        assert!((short - number(&row["short"])).abs() < 0.05, "{short} {row}");
    }
}

#[test]
fn the_comb_has_the_frequency_that_numpy_finds() {
    let truth: Value = serde_json::from_str(include_str!("images/photo_scale.json")).expect("truth");
    for row in rows("comb") {
        let name = row["file"].as_str().expect("a name");
        let marks = points(&truth[name]["marks"]);
        let found = read(&Picture::open(name), &Object::Ruler(marks[0], marks[1], number(&truth[name]["mm"])));
        let mean = marks[0].distance(marks[1]) / found.plane.on_cloth(marks[0]).distance(found.plane.on_cloth(marks[1]));
        let numpy = number(&row["px_per_mm"]);
        assert!((mean / numpy - 1.0).abs() < 0.001, "{mean} px/mm, numpy {numpy}");
    }
}

/// The drawn truth has three digits, and the ruler lies off the cloth by a height that nobody can see: 1.5 % is twice 0.7 mm of it at 10 cm.
#[test]
fn drawn_photographs_give_the_scale_at_the_seam() {
    let truth: Value = serde_json::from_str(include_str!("images/photo_scale.json")).expect("truth");
    for (name, unit) in [
        ("ruler_flat.jpg", Some(Graduation::Millimetre)),
        ("ruler_tilted.jpg", Some(Graduation::Millimetre)),
        ("ruler_inch.jpg", Some(Graduation::Sixteenth)),
        ("card.jpg", None),
    ] {
        let row = &truth[name];
        let (marks, seam) = (points(&row["marks"]), points(&row["seam"]));
        let object = match <[Point; 4]>::try_from(marks.clone()) {
            Ok(corners) => Object::Card(corners),
            Err(_) => Object::Ruler(marks[0], marks[1], number(&row["mm"])),
        };
        let found = scale(&Picture::open(name).raster(), &object).expect("a scale");
        assert_eq!(found.graduation, unit, "{name}");
        let mm = found.plane.on_cloth(seam[0]).distance(found.plane.on_cloth(seam[1]));
        let off = seam[0].distance(seam[1]) / mm / number(&row["px_per_mm_at_seam"]) - 1.0;
        assert!(off.abs() < 0.015, "{name}: {off}");
    }
}

#[test]
fn graduations_that_converge_tell_the_scale_beside_the_ruler() {
    for (right, down, turned) in [(0.0, 0.0, 0.0), (0.0, 14.0, 3.0), (9.0, -12.0, -8.0), (-13.0, 6.0, 20.0)] {
        let camera = Camera::tilted(right, down, turned);
        let picture = Picture::drawn(&camera, |place| ruler(place, 1.0, 220.0, 40.0));
        let object = Object::Ruler(camera.sees(5.15, 10.9), camera.sees(74.9, 11.2), 70.0);
        let found = read(&picture, &object);
        assert_eq!(found.graduation, Some(Graduation::Millimetre));
        for y in [0.0, 5.0, 10.0] {
            assert!(camera.off(&found, 40.0, y) < 0.003, "{right} {down}: {} at {y}", camera.off(&found, 40.0, y));
        }
        let tilt = found.tilt.expect("a tilt");
        let true_tilt = (right.to_radians().cos() * down.to_radians().cos()).acos().to_degrees();
        assert!((tilt - true_tilt).abs() < 2.5, "{tilt} for {true_tilt}");
        assert!(found.found.len() > 60);
        // Places shown lie on graduations.
        assert!(found.found.iter().all(|place| {
            let x = camera.plane.on_cloth(*place).x;
            (x - x.round()).abs() < 0.1
        }));
    }
}

#[test]
fn sixteenths_and_bright_lines_on_dark_are_found_too() {
    let camera = Camera::tilted(4.0, -7.0, 5.0);
    let step = 25.4 / 16.0;
    let sixteenths = Picture::drawn(&camera, |place| ruler(place, step, 200.0, 60.0));
    let found = read(&sixteenths, &Object::Ruler(camera.sees(12.9, 11.0), camera.sees(63.4, 11.0), 50.8));
    assert_eq!(found.graduation, Some(Graduation::Sixteenth));
    assert!(camera.off(&found, 40.0, 5.0) < 0.003, "{}", camera.off(&found, 40.0, 5.0));
    let steel = Picture::drawn(&camera, |place| ruler(place, 1.0, 50.0, 210.0));
    let found = read(&steel, &Object::Ruler(camera.sees(10.1, 11.0), camera.sees(60.0, 11.0), 50.0));
    assert_eq!(found.graduation, Some(Graduation::Millimetre));
    assert!(camera.off(&found, 40.0, 5.0) < 0.003, "{}", camera.off(&found, 40.0, 5.0));
}

#[test]
fn a_ruler_without_graduations_leaves_its_marks_and_says_less_surely() {
    let (from, to) = (at(100.0, 200.0), at(500.0, 220.0));
    let found = read(&Picture::grey(640, 480), &Object::Ruler(from, to, 50.0));
    assert_eq!(found.graduation, None);
    assert!((found.plane.on_cloth(from).distance(found.plane.on_cloth(to)) - 50.0).abs() < 1e-9);
    assert!(share(&found.spread, Cause::Scale) > 0.008);
}

#[test]
fn the_tilt_share_grows_with_the_distance_from_the_object() {
    let found = read(&Picture::grey(640, 480), &Object::Marks(at(100.0, 240.0), at(500.0, 240.0), 80.0));
    let tilt = |x, y| share(&found.spread_at(at(x, y)), Cause::Tilt);
    assert_eq!(tilt(300.0, 240.0), 0.0);
    assert!(tilt(300.0, 300.0) > 0.0 && tilt(300.0, 300.0) < tilt(300.0, 400.0));
    assert!(tilt(f64::NAN, 0.0).is_finite() && tilt(f64::INFINITY, 0.0).is_finite());
}

#[test]
fn corners_of_a_card_are_drawn_to_its_edges_in_any_order() {
    let camera = Camera::tilted(8.0, -9.0, 12.0);
    // A card of 85.60 by 53.98 mm (ISO/IEC 7810, corners rounded by 3.18 mm) from (-2, -7) mm.
    let card = |place: Point| {
        let (x, y) = (place.x + 2.0, place.y + 7.0);
        let (dx, dy) = ((42.8 - x).abs() - 42.8 + 3.18, (26.99 - y).abs() - 26.99 + 3.18);
        let inside = dx <= 3.18 && dy <= 3.18 && (dx <= 0.0 || dy <= 0.0 || dx.hypot(dy) <= 3.18);
        if inside { 190.0 } else { 90.0 + 20.0 * (TAU * (place.x + place.y) / 1.1).sin() }
    };
    let picture = Picture::drawn(&camera, card);
    let [a, b, c, d] = [(-1.8, -6.7), (83.3, -7.2), (83.8, 47.2), (-2.3, 46.8)].map(|(x, y)| camera.sees(x, y));
    for corners in [[a, b, c, d], [c, b, a, d], [b, c, d, a], [a, c, b, d]] {
        let found = read(&picture, &Object::Card(corners));
        assert!(camera.off(&found, 40.0, 0.0) < 0.002, "{}", camera.off(&found, 40.0, 0.0));
        assert!(share(&found.spread, Cause::Scale) < 0.002);
        let true_corner = camera.sees(-2.0, -7.0);
        assert!(found.found.iter().any(|corner| corner.distance(true_corner) < 0.7), "{:?} {true_corner:?}", found.found);
    }
}

#[test]
fn four_places_that_are_no_card_are_refused() {
    let picture = Picture::grey(640, 480);
    let square = [at(100.0, 100.0), at(300.0, 100.0), at(300.0, 300.0), at(100.0, 300.0)];
    assert_eq!(scale(&picture.raster(), &Object::Card(square)), Err(ScaleFault::NotACard));
    let dent = [at(100.0, 100.0), at(400.0, 100.0), at(180.0, 140.0), at(100.0, 300.0)];
    assert_eq!(scale(&picture.raster(), &Object::Card(dent)), Err(ScaleFault::NotACard));
    let upright = [at(100.0, 100.0), at(270.0, 100.0), at(270.0, 369.6), at(100.0, 369.6)];
    let found = read(&picture, &Object::Card(upright));
    assert!((found.plane.px_per_mm(at(200.0, 200.0), at(300.0, 200.0)) / (170.0 / 53.98) - 1.0).abs() < 0.001);
}

#[test]
fn a_coin_is_drawn_to_its_rim() {
    for (right, down) in [(0.0, 0.0), (0.0, 20.0)] {
        let camera = Camera::tilted(right, down, 0.0);
        let coin = |place: Point| if place.distance(at(40.0, 20.0)) < 11.625 { 200.0 } else { 90.0 };
        let picture = Picture::drawn(&camera, coin);
        let rim = (0..6).map(|n| {
            let (sin, cos) = (TAU * f64::from(n) / 6.0 + 0.2).sin_cos();
            let out = if n % 2 == 0 { 11.8 } else { 11.4 };
            camera.sees(40.0 + out * cos, 20.0 + out * sin)
        });
        let found = read(&picture, &Object::Coin(rim.collect(), 23.25));
        assert!(camera.off(&found, 40.0, 20.0) < 0.004, "{}", camera.off(&found, 40.0, 20.0));
        let (here, below) = (camera.sees(40.0, 20.0), camera.sees(40.0, 21.0));
        let off = found.plane.px_per_mm(here, below) / camera.plane.px_per_mm(here, below) - 1.0;
        assert!(off.abs() < 0.01, "{off} down");
        if down > 0.0 {
            assert!((found.tilt.expect("a tilt") - down).abs() < 3.0, "{:?}", found.tilt);
        }
    }
}

#[test]
fn marks_that_make_no_sense_are_refused_with_the_reason() {
    let picture = Picture::grey(640, 480);
    let fault = |object: Object| scale(&picture.raster(), &object).expect_err("a fault");
    let (a, b) = (at(100.0, 100.0), at(400.0, 120.0));
    assert_eq!(fault(Object::Marks(a, a, 20.0)), ScaleFault::Marks);
    assert_eq!(fault(Object::Ruler(a, at(9000.0, 0.0), 20.0)), ScaleFault::Marks);
    assert_eq!(fault(Object::Ruler(a, at(f64::NAN, 0.0), 20.0)), ScaleFault::Marks);
    for size in [0.0, -3.0, f64::NAN, f64::INFINITY] {
        assert_eq!(fault(Object::Marks(a, b, size)), ScaleFault::Size);
        assert_eq!(fault(Object::Ruler(a, b, size)), ScaleFault::Size);
        assert_eq!(fault(Object::Coin(vec![a; 6], size)), ScaleFault::Size);
    }
    assert_eq!(fault(Object::Coin(vec![a, b], 20.0)), ScaleFault::FewOnRim);
    let line = (0..6).map(|n| at(100.0 + 20.0 * f64::from(n), 100.0)).collect();
    assert_eq!(fault(Object::Coin(line, 20.0)), ScaleFault::NotACoin);
}

#[test]
fn nothing_panics_and_every_number_is_finite() {
    let odd = [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 0.0, -1.0, 0.5, 1.0, 30.0, 63.0, 1e9, 1e300];
    for (width, height) in [(1, 1), (1, 64), (64, 1), (64, 48)] {
        let mut picture = Picture::grey(width, height);
        for (n, byte) in picture.rgba.iter_mut().enumerate() {
            *byte = (n * 37 % 251) as u8;
        }
        for n in 0..4000usize {
            let pick = |k: usize| odd[(n * 7919 + k * 104_729 + n / 11 * k) % odd.len()];
            let place = |k: usize| at(pick(2 * k), pick(2 * k + 1));
            let object = match n % 4 {
                0 => Object::Card([place(0), place(1), place(2), place(3)]),
                1 => Object::Ruler(place(0), place(1), pick(9)),
                2 => Object::Coin((0..n % 9).map(place).collect(), pick(30)),
                _ => Object::Marks(place(0), place(1), pick(9)),
            };
            if let Ok(found) = scale(&picture.raster(), &object) {
                assert!(found.found.iter().chain(&found.object).all(|place| place.is_finite()), "{object:?}");
                assert!(found.spread_at(place(5)).iter().all(|part| part.share.is_finite() && part.share >= 0.0), "{object:?}");
                assert!(found.tilt.is_none_or(f64::is_finite));
            }
        }
    }
}

/// A card is 0.76 mm thick (ISO/IEC 7810); at ten centimetres its face looks 0.8 % larger than the cloth under it. What is taken off lies between
/// nothing and that, for a seam stands up too.
#[test]
fn the_cloth_lies_a_little_further_than_the_face_of_a_card() {
    let camera = Camera::tilted(0.0, 0.0, 0.0);
    let picture = Picture::drawn(&camera, |place| ruler(place, 1.0, 220.0, 40.0));
    let corners = [camera.sees(0.0, 0.0), camera.sees(85.6, 0.0), camera.sees(85.6, 53.98), camera.sees(0.0, 53.98)];
    let object = Object::Card(corners);
    let per_mm = |scale: &Scale| scale.plane.px_per_mm(corners[0], corners[1]);
    let (over, on) = (read(&picture, &object), scale(&picture.raster(), &object).expect("a scale"));
    let lower = 1.0 - per_mm(&on) / per_mm(&over);
    assert!(lower > 0.0005 && lower < 0.76 / 100.0, "{lower}");
}
