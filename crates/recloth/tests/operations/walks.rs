//! What a walk tells: kinks at its ends, ease between notches.

use super::*;

// By hand. A seam that leans in by 10° on one piece and by 4° on the other: the hems meet at 100° and at 94° or 86°.
#[test]
fn a_walk_tells_the_kinks_at_its_ends() {
    let leaning = |name: &str, deg: f64| {
        let lean = 300.0 * libm::tan(deg.to_radians());
        let corners = [
            (0.0, 0.0),
            (200.0, 0.0),
            (200.0 + lean, 300.0),
            (0.0, 300.0),
        ];
        let side = |i: usize| Curve::line(corners[i], corners[(i + 1) % 4]);
        let names = ["hem", "side", "top", "centre"];
        Piece::new(
            name,
            (0..4)
                .map(|i| Edge::seam(names[i], side(i), 10.0))
                .collect(),
        )
        .unwrap()
    };
    let (front, back) = (leaning("front", 10.0), leaning("back", -4.0).mirror());
    let side = back.edge("side").unwrap();
    let walk = front.walk(&[1], &back, &[side], Way::Against).unwrap();
    // At the hem the inner angles are 100° and 86°: a dent of 6°. At the top 80° and 94°: a peak of 6°.
    close(walk.start_kink_deg.unwrap(), -6.0, 1e-9);
    close(walk.end_kink_deg.unwrap(), 6.0, 1e-9);
    let same = front
        .walk(&[1], &leaning("other", 10.0), &[1], Way::Along)
        .unwrap();
    close(same.start_kink_deg.unwrap(), -20.0, 1e-9);
    // Beside a fold nothing runs on.
    let fold = Piece::new(
        "fold",
        vec![
            Edge::fold("hem", Curve::line((0.0, 0.0), (200.0, 0.0))),
            Edge::seam("side", Curve::line((200.0, 0.0), (200.0, 300.0)), 10.0),
            Edge::seam("top", Curve::line((200.0, 300.0), (0.0, 0.0)), 10.0),
        ],
    )
    .unwrap();
    let walk = front.walk(&[1], &fold, &[1], Way::Along).unwrap();
    assert_eq!(walk.start_kink_deg, None);
    assert!(walk.end_kink_deg.is_some());
}

#[test]
fn ease_lies_between_notches() {
    let strip = |length: f64, notches: [f64; 2]| {
        let corners = [(0.0, 0.0), (length, 0.0), (length, 50.0), (0.0, 50.0)];
        let side = |i: usize| Curve::line(corners[i], corners[(i + 1) % 4]);
        let edges = (0..4).map(|i| {
            let edge = Edge::seam(["seam", "end", "top", "start"][i], side(i), 10.0);
            if i > 0 {
                edge
            } else {
                edge.notch("front", notches[0], 1)
                    .notch("back", notches[1], 2)
                    .notch(format!("only {length}"), 5.0, 1)
            }
        });
        Piece::new("strip", edges.collect()).unwrap()
    };
    let (cap, armhole) = (strip(460.0, [130.0, 340.0]), strip(440.0, [130.0, 322.0]));
    let walk = cap.walk(&[0], &armhole, &[0], Way::Along).unwrap();
    let sections = walk.sections();
    let sections: Vec<_> = sections
        .iter()
        .map(|s| (s.to.as_deref(), s.length, s.difference))
        .collect();
    assert_eq!(
        sections,
        [
            (Some("front"), 130.0, 0.0),
            (Some("back"), 210.0, 18.0),
            (None, 120.0, 2.0)
        ]
    );
}
