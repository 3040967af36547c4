//! Draws a sample of every draft, of invented measures, and writes what each walked and checked into `report.txt`.
//!
//! `cargo run -p recloth-sheet --example draft_sample -- FOLDER [SCALE]`

#[path = "../../recloth/tests/drafts/samples.rs"]
mod samples;

use std::error::Error;
use std::fmt::Write;
use std::path::Path;

use recloth_sheet::{PieceOptions, piece_drawing, svg};

fn main() -> Result<(), Box<dyn Error>> {
    let folder = std::env::args().nth(1).ok_or("name a folder")?;
    let folder = Path::new(&folder);
    std::fs::create_dir_all(folder)?;
    let scale = std::env::args()
        .nth(2)
        .map_or(Ok(0.4), |text| text.parse())?;
    let options = PieceOptions {
        scale,
        ..PieceOptions::default()
    };
    let mut report = String::new();
    for (name, measures) in samples::all() {
        writeln!(report, "\n{name}")?;
        let draft = match measures.draft() {
            Ok(draft) => draft,
            Err(error) => {
                writeln!(report, "  {error}")?;
                continue;
            }
        };
        for seam in &draft.seams {
            let walk = &seam.walk;
            writeln!(
                report,
                "  seam {}: {:.2} to {:.2}, ease {:.2}, kinks {:?} {:?}",
                seam.name,
                walk.length,
                walk.other_length,
                seam.ease,
                walk.start_kink_deg,
                walk.end_kink_deg
            )?;
        }
        for check in &draft.checks {
            writeln!(
                report,
                "  check {}: {:.6} within {}",
                check.what, check.found, check.within
            )?;
        }
        for length in &draft.lengths {
            writeln!(report, "  length {}: {:.2}", length.name, length.length)?;
        }
        writeln!(
            report,
            "  doubts {:b}, cautions {:b}",
            draft.doubts, draft.cautions
        )?;
        let mut page = String::from("<body style=\"margin:4px\">");
        for piece in &draft.pieces {
            let drawing = svg(&piece_drawing(piece, &options)?)?;
            write!(page, "<div style=\"display:inline-block\">{drawing}</div>")?;
        }
        std::fs::write(folder.join(format!("{name}.html")), page)?;
    }
    std::fs::write(folder.join("report.txt"), report)?;
    Ok(())
}
