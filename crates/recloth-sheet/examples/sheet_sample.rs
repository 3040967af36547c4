//! Writes an invented piece as SVG and PDF, for the independent reader in `tests/oracle/sheet.py`.
//!
//! `cargo run -p recloth-sheet --example sheet_sample -- FOLDER`

use std::error::Error;
use std::path::Path;

use recloth_sheet::kurbo::{BezPath, Point, Vec2};
use recloth_sheet::{
    Anchor, Drawing, Group, Label, LayPanel, LayPiece, Paper, Pen, SheetOptions, Tone, lay_drawing,
    pdf, sheets, svg,
};

fn main() -> Result<(), Box<dyn Error>> {
    let folder = std::env::args().nth(1).ok_or("name a folder")?;
    let folder = Path::new(&folder);
    std::fs::create_dir_all(folder)?;
    let drawings = [skirt(), pocket()];
    for (name, paper) in [("a4", Paper::A4), ("letter", Paper::Letter)] {
        let options = SheetOptions {
            paper,
            ..SheetOptions::default()
        };
        let set = sheets(
            "Linen house-coat: wrap skirt (invented)",
            &drawings,
            &options,
        )?;
        std::fs::write(
            folder.join(format!("{name}.pdf")),
            pdf("Wrap skirt", &set.pages)?,
        )?;
        std::fs::write(
            folder.join(format!("{name}-cover.svg")),
            svg(&set.pages[0].drawing)?,
        )?;
        std::fs::write(
            folder.join(format!("{name}-page.svg")),
            svg(&set.pages[2].drawing)?,
        )?;
    }
    let mut whole = skirt();
    whole.scale_bar(100.0, 1.0);
    std::fs::write(folder.join("skirt.svg"), svg(&whole)?)?;
    std::fs::write(
        folder.join("skirt.pdf"),
        pdf("Skirt", &[skirt().page(10.0)?])?,
    )?;
    let mut small = skirt().scaled(0.2);
    small.scale_bar(100.0, 5.0);
    let lay = lay_drawing("Lay", &[back(), sleeve()], 180.0, 150.0)?;
    std::fs::write(folder.join("lay.svg"), svg(&lay)?)?;
    std::fs::write(folder.join("lay.pdf"), pdf("Lay", &[lay.page(15.0)?])?)?;
    std::fs::write(folder.join("small.svg"), svg(&small)?)?;
    Ok(())
}

/// Half a skirt panel with a curved side; the corners are round numbers, so that the reader knows them.
fn skirt() -> Drawing {
    let mut drawing = Drawing::new("Wrap skirt, front (Größe 44, krój próbny, ⅜″)");
    let mut cut = BezPath::new();
    cut.move_to((0.0, 0.0));
    cut.line_to((480.0, -20.0));
    cut.curve_to((470.0, 300.0), (430.0, 500.0), (380.0, 720.0));
    cut.curve_to((250.0, 700.0), (120.0, 695.0), (0.0, 695.0));
    cut.close_path();
    let mut seam = BezPath::new();
    seam.move_to((15.0, 40.0));
    seam.line_to((463.0, 21.0));
    seam.curve_to((453.0, 300.0), (415.0, 490.0), (368.0, 703.0));
    seam.curve_to((250.0, 685.0), (120.0, 680.0), (15.0, 680.0));
    seam.close_path();
    let mut lines = Drawing::new("");
    lines.line(Pen::Cut, cut).line(Pen::Seam, seam);
    drawing.group(Group {
        id: "lines".into(),
        title: "Cut line and seam line".into(),
        clip: None,
        shapes: lines.shapes,
    });
    drawing.polyline(
        Pen::Seam,
        &[(190.0, 684.0), (205.0, 560.0), (222.0, 687.0)].map(Point::from),
    );
    drawing.segment(
        Pen::Grain,
        Point::new(120.0, 150.0),
        Point::new(120.0, 600.0),
    );
    let mut head = BezPath::new();
    head.move_to((120.0, 606.0));
    head.line_to((117.0, 596.0));
    head.line_to((123.0, 596.0));
    head.close_path();
    drawing.area(Tone::Solid, head);
    for (line, text) in [
        "Wrap skirt, front",
        "cut 2, mirrored",
        "linen; hem 1⅝″ – ł ő ž é è ß ö ½",
    ]
    .iter()
    .enumerate()
    {
        let at = Point::new(250.0, 420.0 - 14.0 * line as f64);
        drawing.label(Label::new(*text, at, 9.0).anchored(Anchor::Middle));
    }
    drawing.label(Label::new("centre front", (24.0, 300.0), 5.0).turned(90.0));
    drawing
}

/// A pocket small enough for one page, with a hatched flaw.
fn pocket() -> Drawing {
    let mut drawing = Drawing::new("Patch pocket");
    let square = [(0.0, 0.0), (150.0, 0.0), (150.0, 170.0), (0.0, 170.0)].map(Point::from);
    drawing.polygon(Pen::Cut, &square);
    drawing.polygon(
        Pen::Fold,
        &square.map(|p| (p.to_vec2() * 0.8 + Vec2::new(15.0, 17.0)).to_point()),
    );
    let mut flaw = BezPath::new();
    flaw.move_to((90.0, 60.0));
    flaw.curve_to((130.0, 60.0), (130.0, 100.0), (90.0, 100.0));
    flaw.curve_to((60.0, 100.0), (60.0, 60.0), (90.0, 60.0));
    flaw.close_path();
    drawing.hatch(&flaw, 2.5).line(Pen::Flaw, flaw);
    drawing.label(Label::new("Patch pocket – cut 2", (75.0, 130.0), 6.0).centred());
    drawing
}

fn points<const N: usize>(corners: [(f64, f64); N]) -> Vec<Point> {
    corners.map(Point::from).to_vec()
}

/// The coat's back panel (invented) with pieces on it.
fn back() -> LayPanel {
    let piece = |label: &str, outline: Vec<Point>| LayPiece {
        label: label.into(),
        outline,
        grain_deg: Some(90.0),
    };
    LayPanel {
        name: "Back panel".into(),
        note: "920 × 1150 mm, linen".into(),
        outline: points([
            (0.0, 0.0),
            (920.0, -15.0),
            (860.0, 700.0),
            (700.0, 1130.0),
            (250.0, 1135.0),
            (60.0, 700.0),
        ]),
        holes: vec![points([
            (600.0, 900.0),
            (640.0, 900.0),
            (640.0, 960.0),
            (600.0, 960.0),
        ])],
        flaws: vec![
            points([
                (120.0, 560.0),
                (190.0, 550.0),
                (210.0, 640.0),
                (140.0, 660.0),
            ]),
            points([(700.0, 500.0)]),
            points([(420.0, 880.0), (420.0, 960.0)]),
        ],
        grain_deg: 90.0,
        fold: None,
        left: Vec::new(),
        pieces: vec![
            piece(
                "Wrap skirt, front (face down)",
                points([(30.0, 10.0), (440.0, 10.0), (400.0, 500.0), (120.0, 500.0)]),
            ),
            piece(
                "Waistband",
                points([(460.0, 20.0), (520.0, 20.0), (520.0, 780.0), (460.0, 780.0)]),
            ),
            piece(
                "Größe Tasche",
                points([
                    (560.0, 40.0),
                    (720.0, 40.0),
                    (720.0, 220.0),
                    (640.0, 250.0),
                    (560.0, 220.0),
                ]),
            ),
            piece(
                "Belt loop",
                points([(760.0, 40.0), (772.0, 40.0), (772.0, 110.0), (760.0, 110.0)]),
            ),
        ],
    }
}

/// The left sleeve (invented).
fn sleeve() -> LayPanel {
    LayPanel {
        name: "Left sleeve".into(),
        note: String::new(),
        outline: points([
            (0.0, 0.0),
            (330.0, 0.0),
            (420.0, 480.0),
            (210.0, 600.0),
            (-60.0, 470.0),
        ]),
        grain_deg: 85.0,
        left: Vec::new(),
        pieces: vec![LayPiece {
            label: "Pinafore bib".into(),
            outline: points([(40.0, 60.0), (290.0, 60.0), (260.0, 330.0), (70.0, 330.0)]),
            grain_deg: Some(85.0),
        }],
        ..LayPanel::default()
    }
}
