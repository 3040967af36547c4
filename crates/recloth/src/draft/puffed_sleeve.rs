//! A puffed sleeve, from a plain one there is.

use alloc::format;
use alloc::vec;
use alloc::vec::Vec;
use kurbo::{Line, Point, Vec2};

use super::Draft;
use super::measured::{Dial, Dials, Measured, drafted};
use super::result::{CheckKind, Sewn, given_row, row, row_length, rows, turn_deg};
use super::trued::trued;
use crate::Error;
use crate::outline::{Curve, Edge, Piece, Place, Slash, Way};
use crate::sleeve::puff_spread;

/// Where a puff's fullness goes at the hem.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(rename_all = "snake_case"))]
pub enum PuffHem {
    /// Nowhere: the slashes end in hinges at the hem, which stays as long.
    #[default]
    Kept,
    /// It is spread as the cap is, and gathered to a band or by elastic.
    Gathered,
}

/// A puffed sleeve: a plain sleeve slashed from cap to hem and spread, its cap raised and drawn anew between the notches.
///
/// The sleeve given has edges `cap front` and `cap back`, with a notch `front` on the one and `back` on the other (as a
/// [`Sleeve`](super::Sleeve) has): the gathers lie between these. However the cap is raised, the zone between the notches
/// is `ratio` as long as it was: the spread is found so.
///
/// The piece keeps its name. Between `cap front` and `cap back` it has `puff front` and `puff back`, with the notch `shoulder`.
/// Lengths: `zone before`, `zone, flat`; of a gathered hem `hem before`.
///
/// # Source
/// [`puff_spread`]. How much the cap is raised is taste: fold it in paper first.
#[derive(Clone, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct PuffedSleeve {
    /// The plain sleeve.
    pub sleeve: Piece,
    /// Zone after spreading over before, 1 to 4.
    pub ratio: f64,
    /// Number of slashes, 1 to 20.
    pub slashes: u32,
    /// How much higher the crown is than the plain one (mm), 0 to 300.
    pub lift: f64,
    /// What becomes of the hem.
    pub hem: PuffHem,
}

impl PuffedSleeve {
    /// Drafts the sleeve: one piece.
    ///
    /// # Errors
    /// `NotFinite`, `OutOfRange` or `NoSolution`, naming the measure; `NoSolution` naming `cap front`, `cap back`, `hem` or
    /// `notches` where the sleeve lacks them.
    pub fn draft(&self) -> Result<Draft, Error> {
        drafted(self)
    }

    /// The sleeve with its cap spread by this much in all, drawn anew between the notches.
    fn spread(&self, zone: &Zone, by: f64) -> Result<Piece, Error> {
        let each = by / f64::from(self.slashes);
        let spread = if each > 1e-6 {
            let slashes: Vec<Slash> = (0..self.slashes)
                .map(|index| {
                    let part = (f64::from(index) + 0.5) / f64::from(self.slashes);
                    Slash {
                        open: zone.at(part),
                        hinge: zone.below(part),
                        open_by: each,
                        hinge_by: match self.hem {
                            PuffHem::Kept => 0.0,
                            PuffHem::Gathered => each,
                        },
                    }
                })
                .collect();
            self.sleeve.slash_and_spread(&slashes)?
        } else {
            self.sleeve.clone()
        };
        let spread = levelled(&spread)?;
        let [from, to] = ends(&spread)?;
        let ((start, before), (end, after)) = (point(&spread, from), point(&spread, to));
        // The crown lies over the middle of what was its mark, raised square to the notches' line.
        let line = unit(end - start);
        let up = Vec2::new(line.y, -line.x);
        let apart = size(end - start);
        let middle = start + line * (apart * zone.crown_share) + up * (zone.rise + self.lift);
        let reach = |a: Point, b: Point| size(b - a) * 0.4;
        let front = Curve::cubic(
            start,
            start + before * reach(start, middle),
            middle - line * reach(start, middle),
            middle,
        );
        let back = Curve::cubic(
            middle,
            middle + line * reach(middle, end),
            end - after * reach(middle, end),
            end,
        );
        let like = &spread.edges()[from.edge];
        let puff = |name: &str, curve| Edge::seam(name, curve, like.allowance);
        let mut edges: Vec<Edge> = Vec::new();
        let mut hem: Vec<Curve> = Vec::new();
        for mut edge in spread.run(to, from) {
            // What the slashes left of the cap beyond the notches is one edge on either side, and so is the hem.
            for name in ["cap front", "cap back", "hem"] {
                if edge.name.starts_with(name) {
                    edge.name = name.into();
                }
            }
            if edge.name == "hem" {
                hem.push(edge.curve);
                edges.retain(|before| before.name != "hem");
            }
            edges.push(edge);
        }
        let wanted = hem.iter().map(Curve::length).sum();
        if let (Some(edge), Some(curve)) = (
            edges.iter_mut().find(|edge| edge.name == "hem"),
            trued(&hem, wanted),
        ) {
            edge.curve = curve;
        }
        edges.push(puff("puff front", front).notch("front", 0.0, 1));
        edges.push(puff("puff back", back).notch("shoulder", 0.0, 1));
        let grain = Line::new(middle + up * -0.25 * size(end - start), middle - up * 20.0);
        spread.remade(edges, spread.marks().to_vec(), Some(grain))
    }
}

/// The sleeve turned so that its notches lie level, the cap up.
fn levelled(sleeve: &Piece) -> Result<Piece, Error> {
    let [from, to] = ends(sleeve)?;
    let along = point(sleeve, from).0 - point(sleeve, to).0;
    Ok(sleeve.turned(-libm::atan2(along.y, along.x).to_degrees()))
}

/// The gathered zone of a plain sleeve, from the front notch over the crown to the back one.
struct Zone<'a> {
    sleeve: &'a Piece,
    front: Place,
    back: Place,
    /// From the front notch to the crown, and from there to the back notch (mm).
    parts: [f64; 2],
    hem: usize,
    /// Where the crown lies between the notches, and how high above their line.
    crown_share: f64,
    rise: f64,
}

impl<'a> Zone<'a> {
    fn new(sleeve: &'a Piece) -> Result<Zone<'a>, Error> {
        let nan = f64::NAN;
        given_row(sleeve, "cap front")?;
        given_row(sleeve, "cap back")?;
        let (_, hem) = given_row(sleeve, "hem")?[0];
        let [front, back] = ends(sleeve)?;
        let parts = [
            sleeve.edges()[front.edge].length() - front.distance,
            back.distance,
        ];
        if back.edge != front.edge + 1 || parts.iter().any(|part| *part < 1.0) {
            return Err(Error::no_solution("notches", nan, nan, nan));
        }
        let (start, end) = (sleeve.point_at(front), sleeve.point_at(back));
        let crown = sleeve.edges()[front.edge].curve.end() - start;
        let line = unit(end - start);
        Ok(Zone {
            sleeve,
            front,
            back,
            parts,
            hem,
            crown_share: (crown.x * line.x + crown.y * line.y) / size(end - start),
            rise: crown.x * line.y - crown.y * line.x,
        })
    }

    fn length(&self) -> f64 {
        self.parts[0] + self.parts[1]
    }

    /// The place at a part of the zone, from the front.
    fn at(&self, part: f64) -> Place {
        let distance = part * self.length();
        if distance < self.parts[0] {
            Place {
                distance: self.front.distance + distance,
                ..self.front
            }
        } else {
            Place {
                edge: self.back.edge,
                distance: distance - self.parts[0],
            }
        }
    }

    /// The place on the hem below it: as far along the hem, which runs the other way.
    fn below(&self, part: f64) -> Place {
        let hem = self.sleeve.edges()[self.hem].length();
        Place {
            edge: self.hem,
            distance: hem * (0.85 - 0.7 * part),
        }
    }
}

/// Where the notches `front` and `back` lie on the cap.
fn ends(sleeve: &Piece) -> Result<[Place; 2], Error> {
    let place = |stem: &str, notch: &str| {
        row(sleeve, stem).into_iter().find_map(|(_, edge)| {
            let notches = &sleeve.edges()[edge].notches;
            let found = notches.iter().find(|one| one.name == notch)?;
            Some(Place {
                edge,
                distance: found.distance,
            })
        })
    };
    let nan = f64::NAN;
    let missing = Error::no_solution("notches", nan, nan, nan);
    Ok([
        place("cap front", "front").ok_or(missing)?,
        place("cap back", "back").ok_or(missing)?,
    ])
}

fn point(piece: &Piece, place: Place) -> (Point, Vec2) {
    piece.edges()[place.edge].curve.at(place.distance)
}

fn size(v: Vec2) -> f64 {
    libm::hypot(v.x, v.y)
}

fn unit(v: Vec2) -> Vec2 {
    v * (1.0 / size(v).max(1e-9))
}

impl Measured for PuffedSleeve {
    fn dials(&mut self) -> Dials<'_> {
        vec![
            ("ratio", Dial::Number(&mut self.ratio, 1.0, 4.0)),
            ("slashes", Dial::Count(&mut self.slashes, 1, 20)),
            ("lift", Dial::Number(&mut self.lift, 0.0, 300.0)),
        ]
    }

    fn attempt(&self) -> Result<Draft, Error> {
        let nan = f64::NAN;
        let zone = Zone::new(&self.sleeve)?;
        let before = zone.length();
        let puff = puff_spread(before, self.ratio, self.slashes, 0.0)?;
        let found = |by: f64| -> Result<(Piece, f64), Error> {
            let piece = self.spread(&zone, by)?;
            let length = row_length(&rows(&piece, &["puff front", "puff back"]));
            Ok((piece, length))
        };
        let no_ratio = |_| Error::no_solution("ratio", self.ratio, nan, nan);
        // Raising lengthens the zone too: the spread is what is left.
        if found(0.0)?.1 > puff.flat {
            return Err(Error::no_solution("lift", self.lift, nan, nan));
        }
        // The zone grows by nearly what is spread: each guess is corrected by what it missed, at the rate of the one before.
        let mut by = puff.added;
        let (mut piece, mut flat) = found(by).map_err(no_ratio)?;
        let mut rate = 1.0;
        for _ in 0..40 {
            let miss = puff.flat - flat;
            if miss.abs() < 1e-6 {
                break;
            }
            let before = (by, flat);
            by = (by + miss / rate).max(0.0);
            (piece, flat) = found(by).map_err(no_ratio)?;
            let grown = (flat - before.1) / (by - before.0);
            if (0.2..=5.0).contains(&grown) {
                rate = grown;
            }
        }
        let mut draft = Draft::new(vec![piece.clone()], puff.doubts);
        draft.check(
            CheckKind::Seam,
            "zone between the notches".into(),
            flat - puff.flat,
        );
        let plain = self
            .sleeve
            .clone()
            .with_name(format!("{}, plain", piece.name()));
        let caps = |piece| rows(piece, &["cap front", "puff front", "puff back", "cap back"]);
        draft.sew(Sewn {
            name: "cap, by what the plain one is",
            edges: caps(&piece),
            others: caps(&plain),
            way: Way::Along,
            ease: puff.added,
            runs: [None, None],
        });
        let cap = caps(&piece);
        for pair in cap.windows(2) {
            let [first, second] = [pair[0].1, pair[1].1].map(|edge| &piece.edges()[edge]);
            let what = format!("{} to {}", first.name, second.name);
            draft.check(CheckKind::Run, what, turn_deg(&piece, pair[0].1, pair[1].1));
        }
        let hem_before = row_length(&row(&self.sleeve, "hem"));
        if self.hem == PuffHem::Kept {
            let found = row_length(&row(&piece, "hem")) - hem_before;
            draft.check(CheckKind::Seam, "hem, which stays as long".into(), found);
        }
        draft.length("zone before", before);
        draft.length("zone, flat", flat);
        if self.hem == PuffHem::Gathered {
            draft.length("hem before", hem_before);
        }
        draft.held("ratio", self.ratio)
    }
}
