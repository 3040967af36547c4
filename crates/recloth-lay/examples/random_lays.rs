//! Random lays as JSON lines, right and spoilt, each with the checker's complaints: for `tests/oracle/lay.py`.
//!
//! `cargo run -p recloth-lay --features serde --example random_lays -- [SEED] [COUNT]`
#![allow(clippy::print_stdout)]

use kurbo::{Point, Vec2};
use recloth_lay::{
    Alone, Answer, Faces, Flaw, Hand, Lay, LeftoverOptions, MatchPoint, MatchSide, Options, Panel,
    Part, Repeat, SEAM_ALLOWANCE, Shows, Unplaced, check, fit, leftovers, placed,
};
use serde_json::json;

/// Marsaglia's xorshift64*, apart from the library's own chances.
struct Chance(u64);

impl Chance {
    fn between(&mut self, low: f64, high: f64) -> f64 {
        self.0 ^= self.0 >> 12;
        self.0 ^= self.0 << 25;
        self.0 ^= self.0 >> 27;
        let bits = self.0.wrapping_mul(0x2545_f491_4f6c_dd1d);
        low + (high - low) * ((bits >> 11) as f64 / (1_u64 << 53) as f64)
    }

    fn pick(&mut self, count: usize) -> usize {
        (self.between(0.0, count as f64) as usize).min(count - 1)
    }

    fn odds(&mut self, share: f64) -> bool {
        self.between(0.0, 1.0) < share
    }

    /// A ring seen whole from its middle, which may be deeply notched.
    fn star(&mut self, middle: Point, size: f64, rough: f64) -> Vec<Point> {
        let corners = 3 + self.pick(9);
        let step = std::f64::consts::TAU / corners as f64;
        (0..corners)
            .map(|i| {
                let (sin, cos) = libm::sincos(step * (i as f64 + self.between(0.1, 0.9)));
                middle + Vec2::new(cos, sin) * (size * self.between(1.0 - rough, 1.0))
            })
            .collect()
    }

    /// A rectangle, so that pieces touch along whole edges.
    fn block(&mut self, size: f64) -> Vec<Point> {
        let (width, height) = (
            (size * self.between(0.4, 1.2)).round(),
            (size * self.between(0.4, 1.2)).round(),
        );
        [(0.0, 0.0), (width, 0.0), (width, height), (0.0, height)]
            .map(Point::from)
            .into()
    }

    /// An outline, and a point that all of it is seen from.
    fn outline(&mut self, size: f64) -> (Vec<Point>, Point) {
        match self.pick(3) {
            0 => {
                let block = self.block(size);
                let middle = block[0].midpoint(block[2]);
                (block, middle)
            }
            _ => {
                let middle = Point::new(self.between(-50.0, 50.0), self.between(-50.0, 50.0));
                (self.star(middle, 0.6 * size, 0.5), middle)
            }
        }
    }

    fn panel(&mut self, index: usize) -> Panel {
        let size = self.between(250.0, 600.0);
        let outline = match self.odds(0.5) {
            true => self.block(size),
            false => self.star(Point::new(size / 2.0, size / 2.0), 0.8 * size, 0.5),
        };
        let place =
            |chance: &mut Chance| Point::new(chance.between(0.0, size), chance.between(0.0, size));
        let holes = (0..self.pick(3))
            .map(|_| {
                let middle = place(self);
                self.star(middle, 0.12 * size, 0.5)
            })
            .collect();
        let flaws = (0..self.pick(4))
            .map(|_| {
                let middle = place(self);
                let outline = match self.pick(3) {
                    0 => vec![middle],
                    1 => vec![middle, place(self)],
                    _ => self.star(middle, 0.08 * size, 0.5),
                };
                let margin = if self.odds(0.5) {
                    self.between(1.0, 15.0)
                } else {
                    0.0
                };
                let under = [
                    &[][..],
                    &["lining"],
                    &[SEAM_ALLOWANCE],
                    &["lining", SEAM_ALLOWANCE],
                ];
                Flaw::new(outline, margin).under(under[self.pick(4)].iter().copied())
            })
            .collect();
        let grain_deg = (self.pick(8) as f64) * 45.0 - 180.0;
        let faces = if self.odds(0.5) {
            Faces::One
        } else {
            Faces::Two
        };
        // Often the same on all panels, so that they match.
        let repeat = self.odds(0.5).then(|| {
            let (along, across) =
                [(80.0, 0.0), (80.0, 0.0), (80.0, 60.0), (0.0, 90.0)][self.pick(4)];
            Repeat::new(along, across).beginning_at(place(self))
        });
        Panel::new(format!("panel {index}"), outline)
            .and_then(|panel| panel.with_repeat(repeat))
            .and_then(|panel| panel.with_holes(holes))
            .and_then(|panel| panel.with_flaws(flaws))
            .and_then(|panel| panel.with_grain_deg(grain_deg))
            .expect("a good panel")
            .with_faces(faces)
            .with_nap(self.odds(0.4))
    }

    fn part(&mut self, index: usize) -> Part {
        let size = self.between(60.0, 260.0);
        let (outline, middle) = self.outline(size);
        // A wide allowance, so that flaws come to lie in it; a star seen whole from its middle shrinks into itself.
        let seam = match self.odds(0.5) {
            true => outline
                .iter()
                .map(|&p| middle + (p - middle) * 0.75)
                .collect(),
            false => Vec::new(),
        };
        let matches = (0..[0, 1, 1, 1, 2][self.pick(5)])
            .map(|number| MatchPoint {
                name: ["hip", "hem"][(number + self.pick(8) / 7) % 2].into(),
                at: outline[self.pick(outline.len())],
                side: [
                    MatchSide::Own,
                    MatchSide::Own,
                    MatchSide::Other,
                    MatchSide::Both,
                    MatchSide::Level,
                ][self.pick(5)],
            })
            .collect();
        Part {
            matches,
            role: ["", "lining"][self.pick(2)].into(),
            seam,
            grain_deg: self.between(-180.0, 180.0),
            tilt_deg: [0.0, 2.0, 15.0, 90.0][self.pick(4)],
            as_drawn: self.pick(3) as u32,
            mirrored: self.pick(3) as u32,
            shows: [
                Shows::Right,
                Shows::Right,
                Shows::Wrong,
                Shows::Either,
                Shows::Both,
            ][self.pick(5)],
            either_way: self.odds(0.3),
            crosswise: self.odds(0.3),
            ..Part::new(format!("part {index}"), outline)
        }
    }

    /// A lay that may be wrong in one way or another.
    fn spoil(&mut self, parts: &[Part], panels: &[Panel], lay: &mut Lay) {
        let count = lay.placements.len();
        if count == 0 {
            lay.unplaced.push(Unplaced {
                part: 0,
                hand: Hand::Mirrored,
                count: 1 + self.pick(2) as u32,
            });
            return;
        }
        let placement = &mut lay.placements[self.pick(count)];
        match self.pick(8) {
            0..=2 => {
                let by = [0.01, 0.1, 1.0, 30.0][self.pick(4)];
                let (sin, cos) = libm::sincos(self.between(0.0, std::f64::consts::TAU));
                placement.shift += Vec2::new(cos, sin) * by;
            }
            3 => placement.turn_deg += self.between(-4.0, 4.0),
            4 => placement.turn_deg += 180.0,
            5 => placement.mirrored = !placement.mirrored,
            6 => placement.panel = self.pick(panels.len()),
            _ => {
                placement.part = self.pick(parts.len());
                placement.hand = Hand::BOTH[self.pick(2)];
            }
        }
        if self.odds(0.2) {
            let copy = lay.placements[self.pick(count)];
            lay.placements.push(copy);
        }
        if self.odds(0.2) {
            lay.spacing = self.between(0.0, 8.0);
        }
    }
}

fn main() {
    let mut arguments = std::env::args().skip(1).map(|text| text.parse::<u64>());
    let seed = arguments.next().and_then(Result::ok).unwrap_or(1);
    let count = arguments.next().and_then(Result::ok).unwrap_or(150);
    let mut chance = Chance(seed.wrapping_mul(0x9e37_79b9_7f4a_7c15) | 1);
    for _ in 0..count {
        let panels: Vec<Panel> = (0..1 + chance.pick(3)).map(|i| chance.panel(i)).collect();
        let parts: Vec<Part> = (0..1 + chance.pick(4)).map(|i| chance.part(i)).collect();
        let options = Options {
            spacing: if chance.odds(0.3) { 3.0 } else { 0.0 },
            seed: 1,
            budget: 2_000_000,
            ..Options::default()
        };
        // A random star may cross itself where two of its rays almost meet: the next one will not.
        let Ok(found) = fit(&parts, &panels, &options) else {
            continue;
        };
        let cannot: Vec<&Alone> = found
            .alone
            .iter()
            .filter(|row| matches!(row.answer, Answer::Cannot(_)))
            .collect();
        let mut lay = found.lay;
        for round in 0..4 {
            if round > 0 {
                chance.spoil(&parts, &panels, &mut lay);
            }
            let complaints = check(&parts, &panels, &lay).err().unwrap_or_default();
            let coordinates: Vec<Vec<Point>> = lay
                .placements
                .iter()
                .map(|placement| placed(&parts[placement.part].outline, placement))
                .collect();
            // What a lay that is right leaves; of one that is wrong it may be an error.
            let left = (round == 0).then(|| {
                leftovers(&parts, &panels, &lay, &LeftoverOptions::default())
                    .expect("a right lay leaves something or nothing")
            });
            println!(
                "{}",
                json!({
                    "parts": parts, "panels": panels, "lay": lay, "from_fit": round == 0,
                    "cannot": if round == 0 { json!(cannot) } else { json!([]) },
                    "placed": coordinates, "complaints": complaints, "left": left,
                })
            );
        }
    }
}
