//! A drawing written as SVG, at true scale.

use core::fmt::{self, Display, Write};

use kurbo::{BezPath, PathEl, Point, Rect};
use recloth::Error;

use crate::{Anchor, Drawing, Label, Shape};

/// What lies behind a drawing.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
#[non_exhaustive]
pub enum Background {
    /// A white sheet: black ink can be read on any page.
    #[default]
    White,
    /// Nothing, and the ink takes the colour of the text around it (`currentColor`): for SVG set inside a page.
    None,
}

/// The drawing as SVG, at true scale on a white sheet: one unit is 1 mm, y turned down.
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming what is not a usable number: see [`Drawing::check`].
pub fn svg(drawing: &Drawing) -> Result<String, Error> {
    svg_on(drawing, Background::White)
}

/// The drawing as SVG on another background.
///
/// # Errors
/// As [`svg`].
pub fn svg_on(drawing: &Drawing, background: Background) -> Result<String, Error> {
    drawing.check()?;
    let bounds = drawing.bounds().unwrap_or(Rect::new(0.0, 0.0, 1.0, 1.0));
    let mut writer = Writer {
        out: String::new(),
        ink: match background {
            Background::White => "#000",
            Background::None => "currentColor",
        },
        paper: match background {
            Background::White => "#fff",
            Background::None => "none",
        },
    };
    // Writing to a String cannot fail.
    let _ = writer.document(drawing, bounds, background);
    Ok(writer.out)
}

struct Writer {
    out: String,
    ink: &'static str,
    paper: &'static str,
}

impl Writer {
    fn document(&mut self, drawing: &Drawing, bounds: Rect, background: Background) -> fmt::Result {
        let (x, y) = (number(bounds.x0), number(-bounds.y1));
        let (width, height) = (number(bounds.width()), number(bounds.height()));
        write!(
            self.out,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}mm\" height=\"{height}mm\" \
             viewBox=\"{x} {y} {width} {height}\" role=\"img\" fill=\"none\" stroke-linejoin=\"round\" \
             font-family=\"sans-serif\">\n<title>{}</title>\n",
            Escaped(&drawing.title)
        )?;
        if background == Background::White {
            writeln!(
                self.out,
                "<rect x=\"{x}\" y=\"{y}\" width=\"{width}\" height=\"{height}\" fill=\"#fff\"/>"
            )?;
        }
        self.shapes(&drawing.shapes)?;
        writeln!(self.out, "</svg>")
    }

    fn shapes(&mut self, shapes: &[Shape]) -> fmt::Result {
        shapes.iter().try_for_each(|shape| self.shape(shape))
    }

    fn shape(&mut self, shape: &Shape) -> fmt::Result {
        match shape {
            Shape::Line { path, .. } | Shape::Area { path, .. } if path.elements().is_empty() => {
                Ok(())
            }
            Shape::Line { pen, path } => {
                write!(
                    self.out,
                    "<path d=\"{}\" stroke=\"{}\" stroke-width=\"{}\"",
                    Data(path),
                    self.ink,
                    number(pen.width())
                )?;
                if pen.ink() < 1.0 {
                    write!(self.out, " stroke-opacity=\"{}\"", number(pen.ink()))?;
                }
                if !pen.dashes().is_empty() {
                    let dashes: Vec<String> = pen
                        .dashes()
                        .iter()
                        .map(|&d| number(d).to_string())
                        .collect();
                    write!(self.out, " stroke-dasharray=\"{}\"", dashes.join(" "))?;
                }
                writeln!(self.out, "/>")
            }
            Shape::Area { tone, path } => {
                let fill = if tone.ink() > 0.0 {
                    self.ink
                } else {
                    self.paper
                };
                write!(
                    self.out,
                    "<path d=\"{}\" fill=\"{fill}\" fill-rule=\"evenodd\"",
                    Data(path)
                )?;
                if tone.ink() > 0.0 && tone.ink() < 1.0 {
                    write!(self.out, " fill-opacity=\"{}\"", number(tone.ink()))?;
                }
                writeln!(self.out, "/>")
            }
            Shape::Label(label) => self.label(label),
            Shape::Group(group) => {
                write!(self.out, "<g")?;
                if !group.id.is_empty() {
                    write!(self.out, " id=\"{}\"", identifier(&group.id))?;
                }
                writeln!(self.out, ">")?;
                if !group.title.is_empty() {
                    writeln!(self.out, "<title>{}</title>", Escaped(&group.title))?;
                }
                match group.clip {
                    None => self.shapes(&group.shapes)?,
                    Some(clip) => self.window(clip, &group.shapes)?,
                }
                writeln!(self.out, "</g>")
            }
        }
    }

    /// Shapes seen through a window: a nested `svg` cuts off what is outside, and needs no identifier, which would have
    /// to be unique in the page around.
    fn window(&mut self, clip: Rect, shapes: &[Shape]) -> fmt::Result {
        let (x, y) = (number(clip.x0), number(-clip.y1));
        let (width, height) = (number(clip.width()), number(clip.height()));
        writeln!(
            self.out,
            "<svg x=\"{x}\" y=\"{y}\" width=\"{width}\" height=\"{height}\" \
             viewBox=\"{x} {y} {width} {height}\" overflow=\"hidden\">"
        )?;
        self.shapes(shapes)?;
        writeln!(self.out, "</svg>")
    }

    fn label(&mut self, label: &Label) -> fmt::Result {
        if label.text.is_empty() {
            return Ok(());
        }
        let (x, y) = (number(label.at.x), number(-label.at.y));
        write!(
            self.out,
            "<text x=\"{x}\" y=\"{y}\" font-size=\"{}\" fill=\"{}\"",
            number(label.size),
            self.ink
        )?;
        match label.anchor {
            Anchor::Start => {}
            Anchor::Middle => write!(self.out, " text-anchor=\"middle\"")?,
            Anchor::End => write!(self.out, " text-anchor=\"end\"")?,
        }
        if label.angle_deg != 0.0 {
            write!(
                self.out,
                " transform=\"rotate({} {x} {y})\"",
                number(-label.angle_deg)
            )?;
        }
        writeln!(self.out, ">{}</text>", Escaped(&label.text))
    }
}

/// A number with at most four decimals and no zeros at its end: 0.1 µm, finer than any printer or cutter.
pub(crate) fn number(value: f64) -> impl Display {
    struct Trimmed(f64);
    impl Display for Trimmed {
        fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
            let text = format!("{:.4}", self.0);
            let text = text.trim_end_matches('0').trim_end_matches('.');
            f.write_str(if text == "-0" { "0" } else { text })
        }
    }
    Trimmed(value)
}

/// Path data, y turned down.
struct Data<'a>(&'a BezPath);

impl Display for Data<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let place = |p: Point| format!("{} {}", number(p.x), number(-p.y));
        for element in self.0.elements() {
            match *element {
                PathEl::MoveTo(p) => write!(f, "M{}", place(p))?,
                PathEl::LineTo(p) => write!(f, "L{}", place(p))?,
                PathEl::QuadTo(a, p) => write!(f, "Q{} {}", place(a), place(p))?,
                PathEl::CurveTo(a, b, p) => write!(f, "C{} {} {}", place(a), place(b), place(p))?,
                PathEl::ClosePath => write!(f, "Z")?,
            }
        }
        Ok(())
    }
}

/// Text made safe for XML; characters XML does not allow become spaces.
struct Escaped<'a>(&'a str);

impl Display for Escaped<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for letter in self.0.chars() {
            match letter {
                '&' => f.write_str("&amp;")?,
                '<' => f.write_str("&lt;")?,
                '>' => f.write_str("&gt;")?,
                '"' => f.write_str("&quot;")?,
                '\u{FFFE}' | '\u{FFFF}' => f.write_char(' ')?,
                _ if letter.is_control() => f.write_char(' ')?,
                _ => f.write_char(letter)?,
            }
        }
        Ok(())
    }
}

/// An identifier of plain letters.
fn identifier(text: &str) -> String {
    text.chars()
        .map(|letter| match letter {
            'a'..='z' | 'A'..='Z' | '0'..='9' | '-' | '_' => letter,
            _ => '-',
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_short_and_never_minus_zero() {
        let shown = |value: f64| number(value).to_string();
        assert_eq!(shown(0.1 + 0.2), "0.3");
        assert_eq!(shown(-0.00001), "0");
        assert_eq!(shown(-0.0), "0");
        assert_eq!(shown(100.0), "100");
        assert_eq!(shown(-12.34567), "-12.3457");
        assert_eq!(shown(1e6), "1000000");
    }
}
