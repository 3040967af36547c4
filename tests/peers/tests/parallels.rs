//! Cut lines against cavalier_contours, a general library of parallels of lines and arcs at one distance: areas and distances
//! agree.

use cavalier_contours::polyline::{PlineSource, PlineSourceMut, Polyline};
use recloth::outline::{Corner, Edge, Piece};
use recloth_peers::{ALLOWANCE, waistcoat_front, waistcoat_front_of_arcs};

/// The library's parallel of a piece's outline, outward; the largest ring if it has several.
fn theirs(piece: &Piece, tolerance: f64, distance: f64) -> Polyline<f64> {
    let mut line = Polyline::new_closed();
    for (_, segment) in piece.segments(tolerance) {
        line.add(segment.start.x, segment.start.y, segment.bulge);
    }
    let mut rings = line.parallel_offset(-distance);
    rings.sort_by(|a, b| b.area().total_cmp(&a.area()));
    rings.swap_remove(0)
}

/// The same piece with rounded corners and this allowance.
fn rounded(piece: &Piece, allowance: f64) -> Piece {
    let edges = piece.edges().iter().cloned().map(|edge| Edge {
        allowance,
        corner: Corner::Rounded { radius: allowance },
        ..edge
    });
    Piece::new("rounded", edges.collect()).expect("a piece")
}

#[test]
fn areas_and_distances_agree() {
    let fronts =
        [waistcoat_front(), waistcoat_front_of_arcs()].map(|piece| piece.expect("a piece"));
    for piece in &fronts {
        // The parallels of one fit are compared, which is within half the tolerance of the cut line.
        let tolerance = 0.01;
        for allowance in [1.0, 6.0, ALLOWANCE, 15.0, 40.0] {
            let piece = rounded(piece, allowance);
            let ours = piece.cut_line(tolerance).expect("a cut line");
            assert_eq!(ours.unmade(), []);
            let theirs = theirs(&piece, tolerance / 2.0, allowance);
            assert!(
                (ours.area() - theirs.area()).abs() < 1e-3,
                "{allowance}: {} and {}",
                ours.area(),
                theirs.area()
            );
            let mut farthest = 0.0;
            for vertex in theirs.iter_vertexes() {
                farthest = ours.distance((vertex.x, vertex.y)).max(farthest);
            }
            assert!(farthest < 1e-4, "{allowance}: {farthest}");
        }
    }
}
