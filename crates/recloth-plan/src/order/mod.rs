//! The order of work: what comes first, what cannot be undone, what to test or try on before it.
//!
//! The rules are the trade's (common practice, no source); each carries its reason in words. A rule speaks of kinds of
//! step; it holds between two steps of the same work, or where one of the two concerns the whole job.

mod kind;
mod rules;

use std::collections::{BTreeMap, BTreeSet};
use std::fmt;
use std::rc::Rc;

use serde::Serialize;

pub use kind::Kind;
use rules::{RULES, Rule};

/// The most steps that are put in order: many times a job, few enough to answer at once.
pub const MAX_STEPS: usize = 1000;

/// One step of the job.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Step {
    /// What is done, in the imperative; names are unique in a list.
    pub name: String,
    /// What kind of step it is.
    pub kind: Kind,
    /// The garment, cloth or part it is done to; empty for the whole job.
    pub work: String,
    /// Names of the steps that must be done before this one, besides those the rules name.
    pub after: Vec<String>,
    /// Why it comes after those, a clause.
    pub why_after: String,
}

impl Step {
    /// A step that only the trade's rules bind.
    pub fn new(name: impl Into<String>, kind: Kind, work: impl Into<String>) -> Step {
        Step {
            name: name.into(),
            kind,
            work: work.into(),
            after: Vec::new(),
            why_after: String::from("asked for"),
        }
    }

    /// The same step, after the step of this name too.
    pub fn after(mut self, name: impl Into<String>) -> Step {
        self.after.push(name.into());
        self
    }

    /// The same step, with the reason for its `after`.
    pub fn why(mut self, why: impl Into<String>) -> Step {
        self.why_after = why.into();
        self
    }
}

/// Why one step comes before another.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Link {
    /// Name of the step that comes first.
    pub first: String,
    /// Name of the step that follows.
    pub then: String,
    /// The reason, a clause.
    pub why: String,
    /// Whether one rule says so; otherwise several do, over kinds of step that are not among the steps.
    pub direct: bool,
}

/// A step in its place.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Placed {
    /// The step.
    pub step: Step,
    /// What had to come just before it, and why; what had to come before that is left out.
    pub because: Vec<Link>,
    /// Why it cannot be undone, where it cannot.
    pub no_return: Option<&'static str>,
    /// What to test, count or try on before it.
    pub before: Vec<&'static str>,
}

impl Placed {
    /// Why it has this place: the reasons of what had to come just before it, each said once.
    pub fn reason(&self) -> Option<String> {
        let mut reasons: Vec<&str> = Vec::new();
        for link in self.because.iter().filter(|link| link.direct) {
            if !reasons.contains(&link.why.as_str()) {
                reasons.push(&link.why);
            }
        }
        (!reasons.is_empty()).then(|| reasons.join("; "))
    }
}

/// The steps in an order that keeps every rule.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[non_exhaustive]
pub struct Order {
    /// The steps, first to last.
    pub steps: Vec<Placed>,
}

/// Why there is no order.
#[derive(Clone, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum OrderError {
    /// Two steps have one name.
    SameName(String),
    /// A step is to come after one that is not there; the nearest name is given where there is one.
    Unknown {
        /// The step that asks.
        step: String,
        /// The name that is not there.
        wanted: String,
        /// The nearest name that is.
        nearest: Option<String>,
    },
    /// More steps than [`MAX_STEPS`].
    TooMany(usize),
    /// Each of these must come before the next, and the last before the first.
    Cycle(Vec<Link>),
}

impl fmt::Display for OrderError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            OrderError::TooMany(count) => {
                write!(
                    f,
                    "{count} steps are more than the {MAX_STEPS} that are put in order"
                )
            }
            OrderError::SameName(name) => write!(f, "two steps are both called \"{name}\""),
            OrderError::Unknown {
                step,
                wanted,
                nearest,
            } => {
                write!(
                    f,
                    "\"{step}\" is to come after \"{wanted}\", which is not among the steps"
                )?;
                match nearest {
                    Some(nearest) => write!(f, "; is \"{nearest}\" meant?"),
                    None => Ok(()),
                }
            }
            OrderError::Cycle(links) => {
                write!(f, "the steps go round in a ring: ")?;
                for (index, link) in links.iter().enumerate() {
                    let lead = if index == 0 { "" } else { "; " };
                    write!(
                        f,
                        "{lead}\"{}\" comes before \"{}\" ({})",
                        link.first, link.then, link.why
                    )?;
                }
                write!(f, "; so none of them can be done first")
            }
        }
    }
}

impl std::error::Error for OrderError {}

/// Puts the steps into an order that keeps the trade's rules and each step's own `after`.
///
/// Where the rules leave a choice the order given is kept. A rule reaches over a kind that is not among the steps: with
/// no `measure waist` in the list, `sew darts` still comes before `cut band`.
///
/// # Errors
/// [`OrderError`]: two steps of one name, an unknown name in `after`, or a ring of steps, told in words.
///
/// # Source
/// The rules are common practice, no source.
///
/// # Examples
/// ```
/// use recloth_plan::order::{Kind, Step, order_check};
/// let steps = [
///     Step::new("sew the darts", Kind::SewDarts, "skirt"),
///     Step::new("cut the lining", Kind::CutLining, "skirt"),
///     Step::new("cut the band", Kind::CutBand, "skirt"),
/// ];
/// let order = order_check(&steps)?;
/// let names: Vec<&str> = order.steps.iter().map(|placed| placed.step.name.as_str()).collect();
/// assert_eq!(names, ["cut the lining", "sew the darts", "cut the band"]);
///
/// let ring = [steps[0].clone().after("cut the band"), steps[2].clone()];
/// assert!(order_check(&ring).unwrap_err().to_string().contains("ring"));
/// # Ok::<(), recloth_plan::order::OrderError>(())
/// ```
pub fn order_check(steps: &[Step]) -> Result<Order, OrderError> {
    if steps.len() > MAX_STEPS {
        return Err(OrderError::TooMany(steps.len()));
    }
    for (index, step) in steps.iter().enumerate() {
        if steps[..index].iter().any(|other| other.name == step.name) {
            return Err(OrderError::SameName(step.name.clone()));
        }
    }
    let links = links_to(steps)?;
    let mut waits: Vec<usize> = links.iter().map(Vec::len).collect();
    // For each step placed: when, and every step that comes before it, through others too.
    let mut rank = vec![0; steps.len()];
    let mut ancestors = vec![vec![false; steps.len()]; steps.len()];
    let mut left: Vec<usize> = (0..steps.len()).collect();
    let mut placed = Vec::with_capacity(steps.len());
    while !left.is_empty() {
        // The earliest given step that waits for nothing.
        let Some(free) = left.iter().position(|&step| waits[step] == 0) else {
            return Err(OrderError::Cycle(ring(steps, &links, &left)));
        };
        let step = left.remove(free);
        for &other in &left {
            waits[other] -= links[other]
                .iter()
                .filter(|link| link.first == step)
                .count();
        }
        // From the latest back: what an earlier one of these does not already bring is just before.
        let mut firsts: Vec<usize> = links[step].iter().map(|link| link.first).collect();
        firsts.sort_unstable_by_key(|&first| std::cmp::Reverse(rank[first]));
        let mut just_before = Vec::new();
        for first in firsts {
            if ancestors[step][first] {
                continue;
            }
            just_before.push(first);
            let before = ancestors[first].clone();
            ancestors[step]
                .iter_mut()
                .zip(before)
                .for_each(|(own, before)| *own |= before);
            ancestors[step][first] = true;
        }
        rank[step] = placed.len();
        placed.push(Placed {
            step: steps[step].clone(),
            because: links[step]
                .iter()
                .filter(|link| just_before.contains(&link.first))
                .map(|link| words(steps, link, step))
                .collect(),
            no_return: steps[step].kind.no_return(),
            before: steps[step].kind.before().to_vec(),
        });
    }
    Ok(Order { steps: placed })
}

/// A link to a step from the one before it, by index.
struct IndexLink {
    first: usize,
    why: Rc<str>,
    direct: bool,
}

fn words(steps: &[Step], link: &IndexLink, then: usize) -> Link {
    Link {
        first: steps[link.first].name.clone(),
        then: steps[then].name.clone(),
        why: link.why.to_string(),
        direct: link.direct,
    }
}

/// The reason why one kind comes before another, and whether it is one rule; none where nothing binds them.
type Reason = Option<(Rc<str>, bool)>;

/// For each step, every step that a rule or its own `after` puts before it.
fn links_to(steps: &[Step]) -> Result<Vec<Vec<IndexLink>>, OrderError> {
    let mut kinds_of: BTreeMap<&str, BTreeSet<Kind>> = BTreeMap::new();
    for step in steps {
        kinds_of.entry(&step.work).or_default().insert(step.kind);
    }
    let present = |work: &str, kind| {
        kinds_of
            .get(work)
            .is_some_and(|kinds| kinds.contains(&kind))
    };
    // Long lists have few kinds: a pair of kinds in a pair of works is looked up once.
    let mut known: BTreeMap<(Kind, Kind, &str, &str), Reason> = BTreeMap::new();
    let mut links = Vec::with_capacity(steps.len());
    for (then, step) in steps.iter().enumerate() {
        let mut to_step = Vec::new();
        for wanted in &step.after {
            let Some(first) = steps.iter().position(|other| &other.name == wanted) else {
                let names = steps.iter().map(|other| other.name.as_str());
                return Err(OrderError::Unknown {
                    step: step.name.clone(),
                    wanted: wanted.clone(),
                    nearest: crate::nearest::nearest(wanted, names).map(str::to_owned),
                });
            };
            to_step.push(IndexLink {
                first,
                why: Rc::from(step.why_after.as_str()),
                direct: true,
            });
        }
        for (first, other) in steps.iter().enumerate() {
            let same = other.work == step.work || other.work.is_empty() || step.work.is_empty();
            if first == then || !same {
                continue;
            }
            let why = known
                .entry((other.kind, step.kind, &other.work, &step.work))
                .or_insert_with(|| {
                    let (why, direct) = reason(other.kind, step.kind, |kind| {
                        ["", &other.work, &step.work]
                            .iter()
                            .any(|work| present(work, kind))
                    })?;
                    Some((Rc::from(why), direct))
                });
            if let Some((why, direct)) = why {
                to_step.push(IndexLink {
                    first,
                    why: why.clone(),
                    direct: *direct,
                });
            }
        }
        links.push(to_step);
    }
    Ok(links)
}

/// The reasons along the shortest chain of rules from one kind to another over kinds that are not among the steps, and
/// whether it is one rule.
fn reason(first: Kind, then: Kind, present: impl Fn(Kind) -> bool) -> Option<(String, bool)> {
    let mut reached: Vec<(Kind, String)> = vec![(first, String::new())];
    let mut next = 0;
    while next < reached.len() {
        let (from, so_far) = reached[next].clone();
        next += 1;
        for Rule(_, to, why) in RULES.iter().filter(|rule| rule.0 == from) {
            let direct = so_far.is_empty();
            let why = if direct {
                (*why).to_owned()
            } else {
                format!("{so_far}; {why}")
            };
            if *to == then {
                return Some((why, direct));
            }
            if !present(*to) && !reached.iter().any(|(kind, _)| kind == to) {
                reached.push((*to, why));
            }
        }
    }
    None
}

/// One ring among the steps left, found by walking backwards until a step comes twice.
fn ring(steps: &[Step], links: &[Vec<IndexLink>], left: &[usize]) -> Vec<Link> {
    let mut walked: Vec<(&IndexLink, usize)> = Vec::new();
    let mut at = left[0];
    loop {
        if let Some(start) = walked.iter().position(|&(_, then)| then == at) {
            return walked[start..]
                .iter()
                .rev()
                .map(|&(link, then)| words(steps, link, then))
                .collect();
        }
        // Every step left waits for one that is left, or it would have been free.
        let Some(link) = links[at].iter().find(|link| left.contains(&link.first)) else {
            return walked
                .iter()
                .rev()
                .map(|&(link, then)| words(steps, link, then))
                .collect();
        };
        walked.push((link, at));
        at = link.first;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn order(steps: &[Step]) -> Vec<String> {
        let order = order_check(steps).unwrap();
        order
            .steps
            .into_iter()
            .map(|placed| placed.step.name)
            .collect()
    }

    /// F25, worked by hand: {darts, lining, band} with darts before band and lining before darts.
    #[test]
    fn the_lining_is_cut_before_the_darts_and_the_band_after() {
        let step = |name, kind| Step::new(name, kind, "skirt");
        let all = [
            step("darts", Kind::SewDarts),
            step("lining", Kind::CutLining),
            step("band", Kind::CutBand),
        ];
        assert_eq!(order(&all), ["lining", "darts", "band"]);
        let turned = [all[2].clone(), all[0].clone(), all[1].clone()];
        assert_eq!(order(&turned), ["lining", "darts", "band"]);
    }

    #[test]
    fn every_rule_of_the_trade_holds_between_two_steps_of_one_work_and_not_of_two_works() {
        for Rule(first, then, why) in RULES {
            let late = Step::new("late", *then, "one");
            let early = Step::new("early", *first, "one");
            assert_eq!(
                order(&[late.clone(), early.clone()]),
                ["early", "late"],
                "{why}"
            );
            let apart = [late, Step::new("early", *first, "another")];
            assert_eq!(order(&apart), ["late", "early"], "{why}");
            let whole_job = [apart[0].clone(), Step::new("early", *first, "")];
            assert_eq!(order(&whole_job), ["early", "late"], "{why}");
        }
    }

    #[test]
    fn only_what_comes_just_before_is_given_as_the_reason() {
        let step = |name, kind| Step::new(name, kind, "skirt");
        let steps = [
            step("cut", Kind::Cut),
            step("darts", Kind::SewDarts),
            step("join", Kind::Join),
            step("band", Kind::CutBand),
        ];
        let order = order_check(&steps).unwrap();
        let firsts = |i: usize| {
            order.steps[i]
                .because
                .iter()
                .map(|l| l.first.as_str())
                .collect::<Vec<_>>()
        };
        assert_eq!(
            (firsts(0), firsts(1), firsts(2), firsts(3)),
            (vec![], vec!["cut"], vec!["darts"], vec!["join"])
        );
        assert_eq!(
            order.steps[2].reason().unwrap(),
            "darts are sewn while the piece lies flat"
        );
        // No step measures the waist, so that no single rule binds the band.
        assert_eq!(order.steps[3].reason(), None);
    }

    #[test]
    fn the_rules_themselves_have_no_ring() {
        let steps: Vec<Step> = Kind::ALL
            .iter()
            .rev()
            .map(|kind| Step::new(kind.name(), *kind, ""))
            .collect();
        let order = order(&steps);
        assert_eq!(order.len(), Kind::ALL.len());
        for Rule(first, then, _) in RULES {
            let at = |kind: &Kind| order.iter().position(|name| name == kind.name());
            assert!(
                at(first) < at(then),
                "{} before {}",
                first.name(),
                then.name()
            );
        }
    }

    #[test]
    fn a_ring_is_told_in_words() {
        let steps = [
            Step::new("record", Kind::Record, ""),
            Step::new("cut the band", Kind::CutBand, "skirt"),
            Step::new("sew the darts", Kind::SewDarts, "skirt")
                .after("cut the band")
                .why("the band is to hide their ends"),
        ];
        let error = order_check(&steps).unwrap_err();
        let OrderError::Cycle(links) = &error else {
            panic!("{error}")
        };
        assert_eq!(links.len(), 2);
        assert_eq!(links[0].then, links[1].first);
        assert_eq!(links[1].then, links[0].first);
        let text = error.to_string();
        assert!(
            text.contains("\"cut the band\" comes before \"sew the darts\" (the band is to hide"),
            "{text}"
        );
        assert!(
            text.contains("\"sew the darts\" comes before \"cut the band\" (a waist edge"),
            "{text}"
        );
    }

    #[test]
    fn a_step_after_itself_is_a_ring_of_one() {
        let error = order_check(&[Step::new("hem", Kind::Hem, "").after("hem")]).unwrap_err();
        assert!(
            matches!(&error, OrderError::Cycle(links) if links.len() == 1),
            "{error}"
        );
    }

    #[test]
    fn slips_in_names_are_named() {
        let steps = [
            Step::new("press", Kind::Press, ""),
            Step::new("hem", Kind::Hem, "").after("prss"),
        ];
        assert_eq!(
            order_check(&steps).unwrap_err().to_string(),
            "\"hem\" is to come after \"prss\", which is not among the steps; is \"press\" meant?"
        );
        let twice = [
            Step::new("hem", Kind::Hem, "a"),
            Step::new("hem", Kind::Hem, "b"),
        ];
        assert_eq!(
            order_check(&twice).unwrap_err().to_string(),
            "two steps are both called \"hem\""
        );
    }

    #[test]
    fn points_of_no_return_say_what_to_test_first() {
        for &kind in Kind::ALL {
            if kind.no_return().is_some() && kind != Kind::Unpick {
                assert!(!kind.before().is_empty(), "{}", kind.name());
            }
            assert_eq!(Kind::from_name(kind.name()), Some(kind));
        }
        assert_eq!(Kind::from_name("bleach"), None);
    }

    #[test]
    fn none_is_none_and_many_end_soon() {
        assert_eq!(order(&[]), Vec::<String>::new());
        let many: Vec<Step> = (0..MAX_STEPS)
            .map(|i| Step::new(format!("{i}"), Kind::ALL[(i * 7) % Kind::ALL.len()], "job"))
            .collect();
        let once = order(&many);
        assert_eq!(once, order(&many));
        assert_eq!(once.len(), MAX_STEPS);
        let more: Vec<Step> = (0..=MAX_STEPS)
            .map(|i| Step::new(format!("{i}"), Kind::Press, ""))
            .collect();
        assert_eq!(
            order_check(&more).unwrap_err(),
            OrderError::TooMany(MAX_STEPS + 1)
        );
    }
}
