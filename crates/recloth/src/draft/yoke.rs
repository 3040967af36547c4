//! A plain yoke: what hangs from the shoulders, above a gathered skirt.

use alloc::vec;
use kurbo::{Point, Vec2};

use super::{Centre, upright};
use crate::Error;
use crate::outline::{Curve, Edge, Piece};

/// How far a shoulder falls over its length (sine): 1 to 4 of common practice, no source.
const FALL: f64 = 0.25;

/// Half a yoke: x from the centre, y from the nape.
#[derive(Clone, Copy, Debug)]
pub(super) struct Yoke {
    /// A quarter of the chest, ease included.
    pub(super) width: f64,
    /// Finished way round the neck edge.
    pub(super) neck: f64,
    pub(super) shoulder: f64,
    pub(super) armhole_depth: f64,
    pub(super) depth: f64,
    pub(super) seam: f64,
}

impl Yoke {
    /// Half the neck's width: a sixth of its edge, a little more than a circle's radius. Common practice, no source.
    fn neck_width(&self) -> f64 {
        self.neck / 6.0
    }

    /// Where the neck meets the shoulder.
    fn neck_point(&self) -> Point {
        let width = self.neck_width();
        Point::new(width, 0.3 * width)
    }

    /// The direction square to the shoulder, upward.
    fn square() -> Vec2 {
        Vec2::new(FALL, libm::sqrt(1.0 - FALL * FALL))
    }

    fn shoulder_tip(&self) -> Point {
        let square = Yoke::square();
        self.neck_point() + Vec2::new(square.y, -square.x) * self.shoulder
    }

    /// The neck edge from the shoulder to the centre, this far below the nape; square to both.
    fn neck_edge(&self, depth: f64) -> Curve {
        let from = self.neck_point();
        let to = Point::new(0.0, -depth);
        let (across, down) = (from.x, from.y - to.y);
        Curve::cubic(
            from,
            from - Yoke::square() * (0.55 * down),
            to + Vec2::new(0.55 * across, 0.0),
            to,
        )
    }

    /// How far below the nape the front neck lies: where front and back are as long as the neck edge.
    pub(super) fn front_neck_depth(&self) -> f64 {
        let wanted = self.neck / 2.0 - self.neck_edge(0.0).length();
        let (mut low, mut high) = (0.0, self.neck);
        for _ in 0..60 {
            let middle = (low + high) / 2.0;
            if self.neck_edge(middle).length() < wanted {
                low = middle;
            } else {
                high = middle;
            }
        }
        (low + high) / 2.0
    }

    /// What cannot be, naming the measure.
    pub(super) fn check(&self) -> Result<(), Error> {
        let nan = f64::NAN;
        let tip = self.shoulder_tip();
        if tip.x + 5.0 > self.width {
            return Err(Error::no_solution("shoulder", self.shoulder, nan, nan));
        }
        if self.armhole_depth + tip.y < 0.25 * self.armhole_depth {
            let depth = self.armhole_depth;
            return Err(Error::no_solution("armhole_depth", depth, nan, nan));
        }
        let least = (self.armhole_depth + 10.0).max(self.front_neck_depth() + 10.0);
        if self.depth < least {
            return Err(Error::no_solution("yoke_depth", self.depth, least, nan));
        }
        Ok(())
    }

    /// Front or back; edges `lower`, `side`, `armhole`, `shoulder`, `neck`, `centre`.
    pub(super) fn half(&self, name: &str, neck_depth: f64, centre: Centre) -> Result<Piece, Error> {
        let tip = self.shoulder_tip();
        let underarm = Point::new(self.width, -self.armhole_depth);
        let corner = Point::new(self.width, -self.depth);
        let rise = tip.y - underarm.y;
        let armhole = Curve::cubic(
            underarm,
            underarm - Vec2::new(1.05 * (self.width - tip.x), 0.0),
            tip - Yoke::square() * (0.55 * rise),
            tip,
        );
        let armhole_length = armhole.length();
        let (mark, marks) = if neck_depth > 0.0 {
            ("front", 1)
        } else {
            ("back", 2)
        };
        let seam = |name: &str, curve| Edge::seam(name, curve, self.seam);
        let line = Curve::line((0.0, -neck_depth), (0.0, -self.depth));
        let side = Curve::line(corner, underarm);
        let side_length = side.length();
        let edges = vec![
            seam("lower", Curve::line((0.0, -self.depth), corner)),
            seam("side", side).notch("side", side_length / 2.0, 1),
            seam("armhole", armhole).notch(mark, armhole_length / 3.0, marks),
            seam("shoulder", Curve::line(tip, self.neck_point())),
            seam("neck", self.neck_edge(neck_depth)),
            match centre {
                Centre::Fold => Edge::fold("centre", line),
                Centre::Seam => seam("centre", line),
            },
        ];
        upright(Piece::new(name, edges)?)
    }
}
