//! Prints random pieces and what operations make of them as JSON, one a line, for `tests/oracle/operations.py`:
//! `cargo run -p recloth --example operations -- COUNT FIRST_SEED`.
#![allow(clippy::print_stdout)]

#[path = "../tests/pieces/mod.rs"]
mod pieces;

use kurbo::{Line, Point};
use pieces::{Kind, Random, random_piece};
use recloth::Error;
use recloth::outline::{
    CopyFit, Curve, Edge, EdgeBy, EdgeEnd, Facing, Kept, Lining, LiningDarts, LiningHem, Meeting,
    NewSeam, Piece, Place, Slash, Way, true_up,
};
use serde_json::{Value, json};

fn main() {
    let mut arguments = std::env::args().skip(1);
    let mut number = |otherwise| match arguments.next() {
        Some(text) => text.parse().expect("a whole number"),
        None => otherwise,
    };
    let (count, first) = (number(40), number(0));
    for seed in first..first + count {
        for straight in [true, false] {
            let kind = Kind {
                straight,
                uniform: true,
                pointed: true,
            };
            let piece = random_piece(seed, kind);
            let mut random = Random::new(seed + 1000);
            for (name, case) in cases(&piece, &mut random, straight) {
                match case {
                    Ok(mut case) => {
                        case["operation"] = name.into();
                        case["seed"] = seed.into();
                        case["straight"] = straight.into();
                        case["before"] = outline(&piece);
                        case["area"] = piece.area().into();
                        println!("{case}");
                    }
                    Err(error) => {
                        let (name, error) = (name, error.to_string());
                        println!(
                            "{}",
                            json!({"operation": name, "seed": seed, "error": error})
                        );
                    }
                }
            }
        }
    }
}

type Case = (&'static str, Result<Value, Error>);

fn cases(piece: &Piece, random: &mut Random, straight: bool) -> Vec<Case> {
    let count = piece.edges().len();
    let mut edge = || random.below(count as u32) as usize;
    let (one, other) = (edge(), edge());
    let point =
        |random: &mut Random| Point::new(random.between(-60.0, 60.0), random.between(-60.0, 60.0));
    let (a, b) = (point(random), point(random));
    let way = (b - a) / libm::hypot(b.x - a.x, b.y - a.y);
    let across = Line::new(a - way * 900.0, a + way * 900.0);
    let by = random.between(2.0, 12.0);
    let depth = random.between(10.0, 40.0);
    let mut cases = vec![
        ("split", split(piece, across)),
        ("unfold", unfold(piece, one)),
        ("scale", scale(piece, across, by)),
        ("facing", facing(piece, one, depth)),
        ("spread", spread(piece, one, other, by)),
        ("true_up", trued(piece, one, other)),
        ("copy", copied(piece, one, by)),
    ];
    if straight {
        cases.push(("extend", extend(piece, across, by)));
        cases.push(("shift", shift(piece, by)));
        cases.push(("shift", shift(piece, -by / 4.0)));
    }
    cases
}

fn split(piece: &Piece, across: Line) -> Result<Value, Error> {
    let seam = NewSeam {
        name: "cut".into(),
        allowance: 10.0,
        notches: Vec::new(),
    };
    let [left, right] = piece.split(&Curve::line(across.p0, across.p1), &seam)?;
    let edge = |piece: &Piece| piece.edge("cut").expect("the seam");
    let moved = right.turned(33.0).shifted((500.0, -200.0));
    let joined = left.join(edge(&left), &moved, edge(&moved), 0.01)?;
    Ok(json!({
        "line": pair(across), "after": [outline(&left), outline(&right)], "joined": outline(&joined.piece),
    }))
}

fn extend(piece: &Piece, across: Line, by: f64) -> Result<Value, Error> {
    let longer = piece.extend(across, by)?;
    Ok(json!({"line": pair(across), "by": by, "after": [outline(&longer)]}))
}

fn shift(piece: &Piece, by: f64) -> Result<Value, Error> {
    let all: Vec<usize> = (0..piece.edges().len()).collect();
    let shifted = piece.shift_edges(&all, by)?;
    Ok(json!({"by": by, "after": [outline(&shifted)]}))
}

fn scale(piece: &Piece, across: Line, pct: f64) -> Result<Value, Error> {
    let grained = piece.clone().with_grain(across)?;
    let scaled = grained.scale_for_change(-pct, pct / 2.0)?;
    Ok(json!({
        "grain_deg": grained.grain_deg(), "along_pct": -pct, "across_pct": pct / 2.0, "after": [outline(&scaled)],
    }))
}

/// The piece laid to a fold along one of its edges, made straight.
fn unfold(piece: &Piece, edge: usize) -> Result<Value, Error> {
    let mut edges = piece.edges().to_vec();
    let curve = edges[edge].curve;
    edges[edge] = Edge::fold("fold", Curve::line(curve.start(), curve.end()));
    let half = Piece::new("half", edges)?;
    let whole = half.unfold()?;
    let fold = [curve.start(), curve.end()].map(|p| [p.x, p.y]);
    Ok(json!({"half": outline(&half), "fold": fold, "after": [outline(&whole)]}))
}

fn facing(piece: &Piece, edge: usize, depth: f64) -> Result<Value, Error> {
    let asked = Facing {
        name: "facing".into(),
        depth,
        roll: 0.0,
        inner_allowance: 0.0,
    };
    let facing = piece.facing(&[edge], &asked)?;
    let lined = piece.lining(&Lining {
        name: "lining".into(),
        cloth: "lining".into(),
        facings: vec![EdgeBy { edge, by: depth }],
        ease: Vec::new(),
        pleats: Vec::new(),
        hem: LiningHem::Level,
        darts: LiningDarts::Sewn,
        allowance: 10.0,
        shell_change_pct: [0.0; 2],
        lining_change_pct: [0.0; 2],
    })?;
    Ok(json!({"after": [outline(&facing), outline(&lined.piece)]}))
}

fn spread(piece: &Piece, one: usize, other: usize, by: f64) -> Result<Value, Error> {
    let place = |edge: usize| Place {
        edge,
        distance: piece.edges()[edge].length() / 3.0,
    };
    let slash = Slash {
        open: place(one),
        hinge: place(other),
        open_by: by,
        hinge_by: by / 2.0,
    };
    let wide = piece.slash_and_spread(&[slash])?;
    let ends = [one, other].map(|edge| piece.at(edge, place(edge).distance).expect("a point").0);
    let slash = ends.map(|p| [p.x, p.y]);
    Ok(json!({"slash": slash, "open_by": by, "hinge_by": by / 2.0, "after": [outline(&wide)]}))
}

/// An edge's end trued up with that of another, as if both their neighbours were sewn together.
fn trued(piece: &Piece, one: usize, other: usize) -> Result<Value, Error> {
    let meeting = Meeting::Seam {
        pieces: [0, 0],
        edges: [one, other],
        way: Way::Along,
        end: EdgeEnd::End,
        kept: Kept::Neither,
    };
    let trued = true_up(std::slice::from_ref(piece), &[meeting], 1000.0)?;
    Ok(json!({"largest": trued.largest, "after": [outline(&trued.pieces[0])]}))
}

/// An edge copied from a piece that is turned and a little larger.
fn copied(piece: &Piece, edge: usize, pct: f64) -> Result<Value, Error> {
    let larger = piece.scale_for_change(-pct, -pct)?.turned(100.0);
    let to = Place {
        edge,
        distance: larger.edges()[edge].length(),
    };
    let from = Place {
        edge,
        distance: 0.0,
    };
    let traced = larger.trace(from, to)?;
    let to = Place {
        edge,
        distance: piece.edges()[edge].length(),
    };
    let fit = CopyFit {
        gap: 0.0,
        stretch_pct: 50.0,
    };
    let copied = piece.copy_edge(from, to, &traced, fit)?;
    Ok(json!({"stretch_pct": copied.stretch_pct, "pct": pct, "after": [outline(&copied.piece)]}))
}

/// The ring as a fine polyline; its first point is not repeated at the end.
fn outline(piece: &Piece) -> Value {
    let mut points: Vec<[f64; 2]> = Vec::new();
    for (_, segment) in piece.segments(1e-4) {
        // Chords that rise 5e-4 over their arc.
        let chord = libm::sqrt(8.0 * 5e-4 * segment.radius());
        let length = segment.length();
        let count = (length / chord).ceil().clamp(1.0, 5000.0) as u32;
        let at = |i: u32| segment.at(length * f64::from(i) / f64::from(count)).0;
        points.extend((1..=count).map(|i| [at(i).x, at(i).y]));
    }
    json!(points)
}

fn pair(line: Line) -> [[f64; 2]; 2] {
    [[line.p0.x, line.p0.y], [line.p1.x, line.p1.y]]
}
