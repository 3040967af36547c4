//! Bands, bindings and pockets, worked by hand.

use recloth::ErrorKind::NoSolution;
use recloth::draft::*;
use recloth::outline::{Curve, Hand};

use super::{close, cut_length, fails, length, samples, seam, sound};

#[test]
fn a_shaped_band_is_part_of_the_ring_of_its_cone() {
    let draft = samples::shaped_band().draft().unwrap();
    let band = &draft.pieces[0];
    // By hand: lower 760, upper 720, depth 50: R = 760 · 50 / 40 = 950 and r = 900. With an overlap of 40 the lower edge is
    // 800, the upper 800 · 900 / 950 = 757.9.
    close(length(band, "lower"), 800.0, 1e-6);
    close(length(band, "upper"), 757.9, 0.05);
    let Curve::Segment(lower) = band.edges()[0].curve else {
        panic!("an arc");
    };
    close(lower.radius(), 950.0, 1e-6);
    // 800 / 950 of a radian is 48.25 degrees.
    close(lower.sweep_deg(), 48.25, 0.005);
    // Cut twice; with an overlap at one end, mirrored.
    assert_eq!(
        (band.cutting().count, band.cutting().hand),
        (2, Hand::Mirrored)
    );
    let even = ShapedBand {
        overlap: 0.0,
        ..samples::shaped_band()
    };
    assert_eq!(
        even.draft().unwrap().pieces[0].cutting().hand,
        Hand::Identical
    );
    // Quarters lie over each other on rays of the ring: the first at 190 below and 190 · 900 / 950 = 180 above.
    let notches = &band.edges()[2].notches;
    close(length(band, "upper") - notches[0].distance, 180.0, 1e-6);
    let flat = ShapedBand {
        upper: 760.0,
        ..samples::shaped_band()
    };
    let error = fails(flat.draft(), NoSolution, "upper");
    sound(
        &ShapedBand {
            upper: error.max(),
            ..flat
        }
        .draft()
        .unwrap(),
    );
    // A ring that would close on itself: too short above.
    let steep = ShapedBand {
        upper: 100.0,
        depth: 100.0,
        ..samples::shaped_band()
    };
    let error = fails(steep.draft(), NoSolution, "upper");
    sound(
        &ShapedBand {
            upper: error.min(),
            ..steep
        }
        .draft()
        .unwrap(),
    );
}

#[test]
fn sections_kink_where_straight_and_run_on_where_curved() {
    // F12: kinks of 13.69 degrees at the joins of straight sections.
    let straight = samples::sectioned_band(false).draft().unwrap();
    let join = seam(&straight, "join 1");
    close(join.walk.start_kink_deg.unwrap(), 13.69, 0.005);
    close(join.walk.end_kink_deg.unwrap(), -13.69, 0.005);
    let curved = samples::sectioned_band(true).draft().unwrap();
    close(
        seam(&curved, "join 1").walk.start_kink_deg.unwrap(),
        0.0,
        1e-6,
    );
    assert!(curved.checks.len() > straight.checks.len());
}

#[test]
fn a_band_of_ribbing_is_shorter_than_its_edge() {
    let band = &samples::edge_band().draft().unwrap().pieces[0];
    // 440 · 0.8 = 352 round, twice 25 wide.
    assert_eq!(
        (band.bounds().width(), band.bounds().height()),
        (352.0, 50.0)
    );
    assert_eq!(band.edges()[0].notches[1].distance, 176.0);
    assert_eq!(band.grain_deg(), 0.0);
}

/// Its ends lie on the straight grain, at 45°: their allowances must not stand out beyond the strip.
#[test]
fn a_binding_is_cut_as_wide_as_its_strip() {
    let draft = samples::binding().draft().unwrap();
    let piece = &draft.pieces[0];
    let cut = piece.cut_line(0.01).unwrap();
    assert_eq!(cut.bounds().height(), piece.bounds().height());
    assert_eq!(cut.unmade(), []);
    // A parallelogram, longer by an allowance of 6 at 45° at either end.
    let long = piece.edges()[0].length() + 2.0 * 6.0 * std::f64::consts::SQRT_2;
    assert!((cut.area() - long * piece.bounds().height()).abs() < 1e-6);
}

#[test]
fn a_binding_lies_on_the_bias() {
    let draft = samples::binding().draft().unwrap();
    let strip = &draft.pieces[0];
    // 1200 and 20 for the ends; a strip of 700 loses 2 · 6 · √2 = 16.97 to its joins, so two of 610. Width 2 · 8 + 2 · 8 + 1.
    assert_eq!(cut_length(&draft, "binding, joined"), 1220.0);
    assert_eq!(strip.cutting().count, 2);
    close(strip.area(), 610.0 * 33.0, 1e-6);
    close(strip.grain_deg(), 45.0, 1e-9);
    // Its ends lie on the grain.
    let end = strip.edges()[strip.edge("end").unwrap()]
        .curve
        .start_tangent();
    close(end.x, end.y, 1e-12);
    // As cut, a strip is no longer along its edge than the cloth gives.
    let cut = strip.cut_line(0.01).unwrap().bounds().width() - 33.0;
    assert!(cut < 700.0 && (cut - 610.0 - 16.97).abs() < 0.01, "{cut}");
    let short = Binding {
        strip: 15.0,
        ..samples::binding()
    };
    let error = fails(short.draft(), NoSolution, "strip");
    sound(
        &Binding {
            strip: error.min(),
            ..short
        }
        .draft()
        .unwrap(),
    );
}

#[test]
fn a_pocket_is_the_same_on_both_sides() {
    let draft = samples::patch_pocket().draft().unwrap();
    let sides = &draft.seams[0].walk;
    // A quarter of a circle of radius 25, and 145 straight.
    close(
        sides.length,
        145.0 + 25.0 * std::f64::consts::FRAC_PI_2,
        1e-9,
    );
    close(sides.difference, 0.0, 1e-9);
}
