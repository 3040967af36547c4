//! The command `recloth`.

use std::ffi::OsString;
use std::io::{self, IsTerminal, Write};
use std::ops::ControlFlow;
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::sync::Mutex;

use clap::{Parser, Subcommand};
use recloth_plan::recloth_lay::{Progress, StripOptions};
use recloth_plan::sum::sum;
use recloth_plan::{BriefError, Plan, SEARCH, plan_with, write};

/// A brief that the help shows: short, and whole.
const EXAMPLE: &str = include_str!("example.toml");

const ABOUT: &str = "The arithmetic and geometry of remaking clothes";

const PLAN_ABOUT: &str = "\
Work out a plan from a brief: what fits on the cloth there is, where, how to cut it, and in which order to sew

A brief is a text file in TOML. It tells who it is for, what cloth there is, panel by panel as the tape measures it, \
and what to make. Lengths carry their unit: \"28 1/2 in\", \"72,5 cm\". A key that is not known is an error that names \
the nearest one.

Files written into the folder (one that is not there is made):
  worksheet.html       to print for the cutting table: cut list, lays, lengths, baths, order of work, doubts, cautions
  sheets-a4.pdf        every piece at full size on A4, with test squares and marks for pasting
  sheets-letter.pdf    the same on Letter
  pieces/*.svg         every piece by itself
  plan.json            the whole plan for other programs, lengths in mm

All of them are written, or none. A plan written there before is replaced; other files in the folder are left alone, \
and where one is in the way nothing is written. Ctrl-C ends the command with nothing half-written.

A cloth with bought_width is bought by the length: its pieces are laid on as little of it as is found. \
With cut_folded = true beside it, it is cut folded lengthwise, through both layers. \
Where it has repeat_along or repeat_across, its print meets at the notches that match_notches names.

Where pieces do not all fit on the panels, [[may_give]] says what may give, what you mind least first: the least of it that \
is found to do is told and drawn.

Exit status:
  0  everything has a place
  1  the plan is written, but not every piece has a place: the summary says which
  2  the brief must be changed (nothing is written), or a piece is larger than every panel of its cloth and nothing that may \
give helps (the plan is written, so that its drawing can be looked at), or the folder cannot be written
  130  interrupted by Ctrl-C";

#[derive(Parser)]
#[command(name = "recloth", version, about = ABOUT, subcommand_required = true, arg_required_else_help = true)]
struct Command {
    #[command(subcommand)]
    task: Task,
}

/// How to look for lays.
#[derive(clap::Args)]
struct Search {
    /// Seconds at most for the lay of each cloth, and as many for what must give; then both depend on the machine
    #[arg(long, value_name = "SECONDS")]
    seconds: Option<f64>,
    /// Evaluations for each cloth that is bought, and thirty times as many for panels: ten million take a few seconds
    #[arg(long, value_name = "COUNT", default_value_t = SEARCH.budget)]
    budget: u64,
    /// Number the search starts from: another may find another lay
    #[arg(long, value_name = "NUMBER", default_value_t = SEARCH.seed)]
    seed: u64,
}

#[derive(Subcommand)]
enum Task {
    #[command(about = PLAN_ABOUT.lines().next(), long_about = PLAN_ABOUT, after_long_help = after_help())]
    Plan {
        /// The brief, a TOML file
        #[arg(value_name = "BRIEF")]
        brief: PathBuf,
        /// The folder to write into
        #[arg(long, value_name = "FOLDER")]
        into: PathBuf,
        #[command(flatten)]
        search: Search,
    },
    /// Answer one function of the library: recloth sum NAME argument=value ...
    ///
    /// Without a name it lists every function; --help behind a name explains it.
    #[command(disable_help_flag = true)]
    Sum {
        /// A name and its arguments, each as argument=value
        // Values may begin with a minus sign, and help is a matter of the function named: `sum` reads all words itself.
        #[arg(
            value_name = "NAME argument=value",
            trailing_var_arg = true,
            allow_hyphen_values = true
        )]
        words: Vec<OsString>,
    },
}

fn after_help() -> String {
    format!(
        "A brief, from first line to last:\n\n{}",
        EXAMPLE.trim_end()
    )
}

fn main() -> ExitCode {
    let (brief, into, search) = match Command::parse().task {
        Task::Plan {
            brief,
            into,
            search,
        } => (brief, into, search),
        Task::Sum { words } => return answer(&words),
    };
    // Without it an interrupt ends the command just as well, but may leave a hidden unfinished folder.
    let _ = ctrlc::set_handler(interrupted);
    match run(&brief, &into, &search) {
        Ok(code) => code,
        Err(message) => {
            // Nowhere is left to tell of an error in telling an error.
            let _ = writeln!(io::stderr(), "{message}");
            ExitCode::from(2)
        }
    }
}

fn answer(words: &[OsString]) -> ExitCode {
    let words: Vec<String> = words
        .iter()
        .map(|word| word.to_string_lossy().into_owned())
        .collect();
    // Longer lines are hard to read.
    let told = sum(&words, textwrap::termwidth().min(100));
    // A closed pipe (`| head`) is no fault of the sum.
    let _ = io::stdout().write_all(told.out.as_bytes());
    let _ = io::stderr().write_all(told.err.as_bytes());
    ExitCode::from(told.code)
}

/// Held while files are written, so that an interrupt waits until all of them are there.
static WRITING: Mutex<()> = Mutex::new(());

/// What a command that was interrupted ends with, by custom of shells: 128 and the signal's number.
const INTERRUPTED: i32 = 130;

fn interrupted() {
    let _written = WRITING.lock();
    let _ = writeln!(io::stderr(), "\ninterrupted: nothing half-written");
    std::process::exit(INTERRUPTED);
}

/// Tells a terminal how far the search for a lay is.
fn tell(cloth: &str, so_far: Progress) -> ControlFlow<()> {
    let mut shown = io::stderr();
    if shown.is_terminal() {
        let done = 100.0 * so_far.done;
        // A closed terminal is no fault of the search.
        let _ = write!(shown, "\rlaying {cloth:.40}: {done:3.0} %\x1b[K");
        let _ = shown.flush();
    }
    ControlFlow::Continue(())
}

fn run(brief: &Path, into: &Path, search: &Search) -> Result<ExitCode, String> {
    let name = brief.display().to_string();
    let text = read(brief, &name).map_err(|error| error.to_string())?;
    let options = StripOptions {
        seconds: search.seconds,
        budget: search.budget,
        seed: search.seed,
        ..SEARCH
    };
    let plan = plan_with(&text, &name, &options, &mut tell);
    if io::stderr().is_terminal() {
        let _ = write!(io::stderr(), "\r\x1b[K");
    }
    let plan = plan.map_err(|error| error.to_string())?;
    {
        let _all_or_nothing = WRITING.lock();
        write(&plan, into).map_err(|error| error.to_string())?;
    }
    // A closed pipe (`| head`) is no fault of the plan.
    let _ = io::stdout().write_all(summary(&plan, into).as_bytes());
    let too_large = plan.too_large();
    if !too_large.is_empty() {
        return Err(too_large
            .iter()
            .map(BriefError::to_string)
            .collect::<Vec<_>>()
            .join("\n"));
    }
    Ok(if plan.unplaced().is_empty() {
        ExitCode::SUCCESS
    } else {
        ExitCode::from(1)
    })
}

fn read(brief: &Path, name: &str) -> Result<String, ReadError> {
    let bytes = std::fs::read(brief).map_err(|error| ReadError {
        name: name.to_owned(),
        line: None,
        wrong: format!("the brief cannot be read: {error}"),
        right: "Give the path of a brief, as in: recloth plan house-coat.toml --into out",
    })?;
    String::from_utf8(bytes).map_err(|error| {
        let good = &error.as_bytes()[..error.utf8_error().valid_up_to()];
        ReadError {
            name: name.to_owned(),
            line: Some(good.iter().filter(|&&byte| byte == b'\n').count() + 1),
            wrong: String::from("the brief is not text in UTF-8"),
            right: "Save it as plain text with the encoding UTF-8.",
        }
    })
}

struct ReadError {
    name: String,
    line: Option<usize>,
    wrong: String,
    right: &'static str,
}

impl std::fmt::Display for ReadError {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{}", self.name)?;
        if let Some(line) = self.line {
            write!(f, ":{line}")?;
        }
        write!(f, ": {}\n  {}", self.wrong, self.right)
    }
}

/// What the terminal shows: what fits, where, what does not, doubts, and where the files are.
fn summary(plan: &Plan, into: &Path) -> String {
    let mut lines = vec![
        plan.title.clone(),
        String::new(),
        plan.answer(),
        String::new(),
    ];
    for laid in &plan.lays {
        for (index, panel) in laid.panels.iter().enumerate() {
            let mut on: Vec<(usize, u32)> = Vec::new();
            for placement in laid.fit.lay.placements.iter().filter(|p| p.panel == index) {
                let number = laid.pieces[placement.part];
                match on.iter_mut().find(|(known, _)| *known == number) {
                    Some((_, count)) => *count += 1,
                    None => on.push((number, 1)),
                }
            }
            on.sort_unstable();
            let on: Vec<String> = on
                .iter()
                .map(|&(number, count)| {
                    let name = plan.pieces[number - 1].piece.name();
                    if count > 1 {
                        format!("{count} x {name}")
                    } else {
                        name.to_owned()
                    }
                })
                .collect();
            let on = if on.is_empty() {
                String::from("left over")
            } else {
                on.join(", ")
            };
            lines.push(format!("  {:<16} {on}", panel.name()));
        }
    }
    for laid in &plan.lays {
        lines.extend(plan.left_over(laid).map(|line| format!("  {line}")));
    }
    lines.extend(plan.to_buy().iter().map(|line| format!("  {line}")));
    lines.push(String::new());
    let halts = plan
        .order
        .steps
        .iter()
        .filter(|placed| placed.no_return.is_some())
        .count();
    lines.push(format!(
        "{} steps, {halts} of which cannot be undone. {}",
        plan.order.steps.len(),
        match plan.doubts.len() {
            0 => String::from("No doubts."),
            1 => String::from("One doubt:"),
            count => format!("{count} doubts:"),
        }
    ));
    lines.extend(plan.doubts.iter().map(|doubt| format!("  - {doubt}")));
    if plan.baths.is_empty() {
        lines.push(String::from("Read the cautions on the worksheet first."));
    } else {
        lines.push(String::from(
            "Read the cautions on the worksheet before the baths.",
        ));
    }
    lines.push(String::new());
    lines.push(format!(
        "Print this for the cutting table: {}",
        into.join("worksheet.html").display()
    ));
    lines.push(format!(
        "Pieces at full size: {} (or -letter)",
        into.join("sheets-a4.pdf").display()
    ));
    lines.push(String::new());
    lines.join("\n")
}
