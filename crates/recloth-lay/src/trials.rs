//! One fit after another, out of one budget and one time.

use core::ops::ControlFlow;
use std::time::Instant;

use crate::fit::fit_until;
use crate::{Error, Fit, Options, Panel, Part};

/// Trials that share a budget and a time.
pub(crate) struct Trials<'a> {
    panels: &'a [Panel],
    options: &'a Options,
    start: Instant,
    /// Evaluations that are left.
    pub(crate) left: u64,
}

impl<'a> Trials<'a> {
    pub(crate) fn new(panels: &'a [Panel], options: &'a Options) -> Trials<'a> {
        Trials {
            panels,
            options,
            start: Instant::now(),
            left: options.budget,
        }
    }

    /// How some parts fit, by so many evaluations at most; where a proof says that they do not, nothing is looked for.
    pub(crate) fn fit(&mut self, parts: &[Part], budget: u64) -> Result<Fit, Error> {
        let spent = self.start.elapsed().as_secs_f64();
        let options = Options {
            budget,
            seconds: (self.options.seconds).map(|seconds| (seconds - spent).max(0.0)),
            ..*self.options
        };
        let found = fit_until(parts, self.panels, &options, true, &mut |_| {
            ControlFlow::Continue(())
        })?;
        self.left = self.left.saturating_sub(found.evaluations);
        Ok(found)
    }
}
