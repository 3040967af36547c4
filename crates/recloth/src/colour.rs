//! Colours as numbers: screen levels, XYZ, CIELAB, and how far apart two colours look.

use crate::Error;

/// XYZ of the linear red, green and blue of IEC 61966-2-1, with the standard's own four decimals.
const TO_XYZ: [[f64; 3]; 3] = [
    [0.4124, 0.3576, 0.1805],
    [0.2126, 0.7152, 0.0722],
    [0.0193, 0.1192, 0.9505],
];
/// The inverse of `TO_XYZ` to f64, so that a colour comes back; the standard's four decimals would lose 1 level in 2000.
const FROM_XYZ: [[f64; 3]; 3] = [
    [3.2406254773200533, -1.5372079722103187, -0.4986285986982479],
    [-0.9689307147293194, 1.875756060885241, 0.04151752384295394],
    [0.05571012044551061, -0.2040210505984867, 1.0569959422543882],
];

/// Chromaticity of daylight D65, the white of sRGB, as IEC 61966-2-1 gives it.
const D65: (f64, f64) = (0.3127, 0.3290);

/// Where the cube root of CIELAB gives way to a line: (6/29)^3.
const LINE_BELOW: f64 = 216.0 / 24389.0;
/// Slope of that line, in units of L*: (29/3)^3.
const LINE_SLOPE: f64 = 24389.0 / 27.0;

/// A colour by its tristimulus values; white has a `y` of 1.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Xyz {
    /// X (1).
    pub x: f64,
    /// Y, the luminance: share of the white's (1).
    pub y: f64,
    /// Z (1).
    pub z: f64,
}

/// A colour in CIELAB.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Lab {
    /// Lightness L*: 0 is black, 100 white (1).
    pub l: f64,
    /// a*: green below 0, red above (1).
    pub a: f64,
    /// b*: blue below 0, yellow above (1).
    pub b: f64,
}

/// A colour by its screen levels.
#[derive(Clone, Copy, Debug, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
#[non_exhaustive]
pub struct Srgb {
    /// Red, 0 to 255 where a screen can show it (1).
    pub red: f64,
    /// Green, 0 to 255 where a screen can show it (1).
    pub green: f64,
    /// Blue, 0 to 255 where a screen can show it (1).
    pub blue: f64,
    /// How many of the three a screen cannot show (count).
    pub outside: u32,
}

/// Light of one screen level, as a share of the most.
///
/// With `c = level / 255`: `c / 12.92` up to `c = 0.04045`, above it `((c + 0.055) / 1.055)^2.4`. Levels are not light: the
/// middle level 128 has a fifth of it.
///
/// | argument | unit | range    | default | meaning                           |
/// |----------|------|----------|---------|-----------------------------------|
/// | `level`  | 1    | 0..=255  | -       | red, green or blue of a picture   |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Share of the most light (1).
///
/// # Source
/// IEC 61966-2-1 (sRGB).
///
/// # Examples
/// ```
/// use recloth::colour::linear_light;
/// assert!((linear_light(100.0)? - 0.12743768).abs() < 1e-8);
/// assert_eq!(linear_light(256.0).unwrap_err().argument(), "level");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn linear_light(level: f64) -> Result<f64, Error> {
    Ok(decode(check_level("level", level)?))
}

/// Screen level of an amount of light: [`linear_light`] turned round.
///
/// | argument | unit | range  | default | meaning                  |
/// |----------|------|--------|---------|--------------------------|
/// | `light`  | 1    | 0..=1  | -       | share of the most light  |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Level, 0 to 255, not rounded (1).
///
/// # Source
/// IEC 61966-2-1 (sRGB).
///
/// # Examples
/// ```
/// use recloth::colour::screen_level;
/// assert!((screen_level(0.18)? / 255.0 - 0.461356129500442).abs() < 1e-12);
/// assert_eq!(screen_level(1.1).unwrap_err().argument(), "light");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn screen_level(light: f64) -> Result<f64, Error> {
    Ok(encode(Error::check("light", light, 0.0, 1.0)?))
}

/// Tristimulus values of a colour given by its screen levels.
///
/// | argument | unit | range    | default | meaning      |
/// |----------|------|----------|---------|--------------|
/// | `red`    | 1    | 0..=255  | -       | red level    |
/// | `green`  | 1    | 0..=255  | -       | green level  |
/// | `blue`   | 1    | 0..=255  | -       | blue level   |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// IEC 61966-2-1 (sRGB), its matrix with four decimals. A matrix worked out from the primaries differs by less than
/// 0.0001; a grey then has an a* of 0 and not of 0.005.
///
/// # Examples
/// ```
/// use recloth::colour::xyz_from_srgb;
/// assert!((xyz_from_srgb(255.0, 255.0, 255.0)?.x - 0.9505).abs() < 1e-12);
/// assert_eq!(xyz_from_srgb(0.0, -1.0, 0.0).unwrap_err().argument(), "green");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn xyz_from_srgb(red: f64, green: f64, blue: f64) -> Result<Xyz, Error> {
    let red = check_level("red", red)?;
    let green = check_level("green", green)?;
    let blue = check_level("blue", blue)?;
    let [x, y, z] = product(&TO_XYZ, [decode(red), decode(green), decode(blue)]);
    Ok(Xyz { x, y, z })
}

/// Screen levels of a colour given by its tristimulus values.
///
/// A colour that no screen shows is brought to the nearest end of each level, and counted in `outside`: its hue is then
/// not true.
///
/// | argument | unit | range  | default | meaning                             |
/// |----------|------|--------|---------|-------------------------------------|
/// | `x`      | 1    | 0..=2  | -       | X                                   |
/// | `y`      | 1    | 0..=2  | -       | Y, the luminance: white has 1       |
/// | `z`      | 1    | 0..=2  | -       | Z                                   |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// IEC 61966-2-1 (sRGB); the matrix is the inverse of the one in [`xyz_from_srgb`], to the last digit, so that a colour
/// comes back.
///
/// # Examples
/// ```
/// use recloth::colour::srgb_from_xyz;
/// let white = srgb_from_xyz(0.9505, 1.0, 1.0890)?;
/// assert!((white.red - 255.0).abs() < 1e-9 && white.outside == 0);
/// assert_eq!(srgb_from_xyz(0.5, f64::NAN, 0.5).unwrap_err().argument(), "y");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn srgb_from_xyz(x: f64, y: f64, z: f64) -> Result<Srgb, Error> {
    let x = check_stimulus("x", x)?;
    let y = check_stimulus("y", y)?;
    let z = check_stimulus("z", z)?;
    Ok(levels(Xyz { x, y, z }))
}

/// CIELAB of a colour given by its tristimulus values.
///
/// The white is given by its chromaticity; its `Y` is 1.
///
/// | argument  | unit | range         | default | meaning                                         |
/// |-----------|------|---------------|---------|-------------------------------------------------|
/// | `x`       | 1    | 0..=2         | -       | X                                               |
/// | `y`       | 1    | 0..=2         | -       | Y, the luminance: white has 1                   |
/// | `z`       | 1    | 0..=2         | -       | Z                                               |
/// | `white_x` | 1    | 0.05..=0.8    | 0.3127  | chromaticity x of the white: daylight D65       |
/// | `white_y` | 1    | 0.05..=0.8    | 0.329   | chromaticity y of the white                     |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `white_y` when both together leave no Z: they
/// must sum to less than 1.
///
/// # Source
/// CIE 15, *Colorimetry*, CIELAB (1976).
///
/// # Examples
/// ```
/// use recloth::colour::lab_from_xyz;
/// let skin = lab_from_xyz(0.20654008, 0.12197225, 0.05136952, 0.3127, 0.3290)?;
/// assert!((skin.l - 41.52787529).abs() < 1e-6 && (skin.a - 52.63858304).abs() < 1e-6);
/// assert_eq!(lab_from_xyz(0.2, 0.1, 0.05, 0.6, 0.6).unwrap_err().argument(), "white_y");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn lab_from_xyz(x: f64, y: f64, z: f64, white_x: f64, white_y: f64) -> Result<Lab, Error> {
    let x = check_stimulus("x", x)?;
    let y = check_stimulus("y", y)?;
    let z = check_stimulus("z", z)?;
    let white_x = Error::check("white_x", white_x, 0.05, 0.8)?;
    let white_y = Error::check("white_y", white_y, 0.05, 0.8)?;
    let most = 0.999 - white_x;
    if white_y > most {
        return Err(Error::no_solution("white_y", white_y, 0.05, most));
    }
    Ok(lab(Xyz { x, y, z }, (white_x, white_y)))
}

/// Tristimulus values of a colour given in CIELAB, under daylight D65: [`lab_from_xyz`] turned round.
///
/// | argument | unit | range        | default | meaning                        |
/// |----------|------|--------------|---------|--------------------------------|
/// | `l`      | 1    | 0..=100      | -       | lightness L*                   |
/// | `a`      | 1    | -200..=200   | -       | a*: green below 0, red above   |
/// | `b`      | 1    | -200..=200   | -       | b*: blue below 0, yellow above |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// CIE 15, *Colorimetry*, CIELAB (1976).
///
/// # Examples
/// ```
/// use recloth::colour::xyz_from_lab;
/// assert!((xyz_from_lab(41.52787529, 52.63858304, 26.92317922)?.x - 0.20654008).abs() < 1e-7);
/// assert_eq!(xyz_from_lab(101.0, 0.0, 0.0).unwrap_err().argument(), "l");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn xyz_from_lab(l: f64, a: f64, b: f64) -> Result<Xyz, Error> {
    let [l, a, b] = check_lab(["l", "a", "b"], [l, a, b])?;
    Ok(from_lab(l, a, b))
}

/// CIELAB of a colour given by its screen levels, under daylight D65.
///
/// Of cloth photographed: put a white card beside it, in the same even daylight, and bring the card to equal levels first.
/// Without it the numbers are the lamp's and the camera's. Wet cloth is darker than dry.
///
/// | argument | unit | range    | default | meaning      |
/// |----------|------|----------|---------|--------------|
/// | `red`    | 1    | 0..=255  | -       | red level    |
/// | `green`  | 1    | 0..=255  | -       | green level  |
/// | `blue`   | 1    | 0..=255  | -       | blue level   |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// IEC 61966-2-1 (sRGB, matrix with four decimals) and CIE 15 (CIELAB). A matrix worked out from the primaries gives greys
/// an a* and b* of 0, this one up to 0.01.
///
/// # Examples
/// ```
/// use recloth::colour::lab_from_srgb;
/// let onion = lab_from_srgb(139.0, 69.0, 19.0)?;
/// assert!((onion.l - 37.4669).abs() < 1e-4 && (onion.b - 40.9890).abs() < 1e-3);
/// assert_eq!(lab_from_srgb(139.0, 69.0, 300.0).unwrap_err().argument(), "blue");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn lab_from_srgb(red: f64, green: f64, blue: f64) -> Result<Lab, Error> {
    Ok(lab(xyz_from_srgb(red, green, blue)?, D65))
}

/// Screen levels of a colour given in CIELAB under daylight D65.
///
/// A colour that no screen shows is brought to the nearest end of each level, and counted in `outside`.
///
/// | argument | unit | range        | default | meaning                        |
/// |----------|------|--------------|---------|--------------------------------|
/// | `l`      | 1    | 0..=100      | -       | lightness L*                   |
/// | `a`      | 1    | -200..=200   | -       | a*: green below 0, red above   |
/// | `b`      | 1    | -200..=200   | -       | b*: blue below 0, yellow above |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Source
/// CIE 15 (CIELAB) and IEC 61966-2-1 (sRGB).
///
/// # Examples
/// ```
/// use recloth::colour::srgb_from_lab;
/// let onion = srgb_from_lab(37.4669, 26.4478, 40.9890)?;
/// assert!((onion.red - 139.0).abs() < 0.01 && onion.outside == 0);
/// assert!(srgb_from_lab(50.0, 150.0, 0.0)?.outside > 0);
/// assert_eq!(srgb_from_lab(50.0, 201.0, 0.0).unwrap_err().argument(), "a");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn srgb_from_lab(l: f64, a: f64, b: f64) -> Result<Srgb, Error> {
    Ok(levels(xyz_from_lab(l, a, b)?))
}

/// How far apart two colours look, by CIEDE2000.
///
/// With all three weights at 1. About 1 is just seen on plain cloth side by side; what is allowed for a match is yours to
/// say. Where the two hues lie opposite each other the formula has a step, small for cloth.
///
/// | argument | unit | range        | default | meaning             |
/// |----------|------|--------------|---------|---------------------|
/// | `l1`     | 1    | 0..=100      | -       | L* of one colour    |
/// | `a1`     | 1    | -200..=200   | -       | a* of one colour    |
/// | `b1`     | 1    | -200..=200   | -       | b* of one colour    |
/// | `l2`     | 1    | 0..=100      | -       | L* of the other     |
/// | `a2`     | 1    | -200..=200   | -       | a* of the other     |
/// | `b2`     | 1    | -200..=200   | -       | b* of the other     |
///
/// # Errors
/// `NotFinite` or `OutOfRange`, naming the argument.
///
/// # Returns
/// Colour difference (1).
///
/// # Source
/// G. Sharma, W. Wu, E. N. Dalal, *The CIEDE2000 Color-Difference Formula*, Color Res. Appl. 30(1):21-30, 2005, with its
/// test pairs.
///
/// # Examples
/// ```
/// use recloth::colour::ciede2000;
/// let apart = ciede2000(50.0, 2.6772, -79.7751, 50.0, 0.0, -82.7485)?;
/// assert!((apart - 2.0425).abs() < 1e-4);
/// assert_eq!(ciede2000(50.0, 0.0, 0.0, 50.0, 0.0, -300.0).unwrap_err().argument(), "b2");
/// # Ok::<(), recloth::Error>(())
/// ```
#[inline]
pub fn ciede2000(l1: f64, a1: f64, b1: f64, l2: f64, a2: f64, b2: f64) -> Result<f64, Error> {
    let [l1, a1, b1] = check_lab(["l1", "a1", "b1"], [l1, a1, b1])?;
    let [l2, a2, b2] = check_lab(["l2", "a2", "b2"], [l2, a2, b2])?;
    Ok(difference([l1, a1, b1], [l2, a2, b2]))
}

/// CIEDE2000 of two checked colours; names as in the paper, angles in degrees.
#[inline]
pub(crate) fn difference([l1, a1, b1]: [f64; 3], [l2, a2, b2]: [f64; 3]) -> f64 {
    // Chroma's seventh power against that of 25, which occurs twice.
    let seventh = |chroma: f64| {
        let third = chroma * chroma * chroma;
        let power = third * third * chroma;
        libm::sqrt(power / (power + 6_103_515_625.0))
    };
    let mean_chroma = (libm::hypot(a1, b1) + libm::hypot(a2, b2)) / 2.0;
    let stretch = 1.0 + 0.5 * (1.0 - seventh(mean_chroma));
    let polar = |a: f64, b: f64| {
        let a = a * stretch;
        let hue = if a == 0.0 && b == 0.0 {
            0.0
        } else {
            let hue = libm::atan2(b, a).to_degrees();
            if hue < 0.0 { hue + 360.0 } else { hue }
        };
        (libm::hypot(a, b), hue)
    };
    let (c1, h1) = polar(a1, b1);
    let (c2, h2) = polar(a2, b2);
    let grey = c1 * c2 == 0.0;

    let turn = h2 - h1;
    let hue_step = if grey {
        0.0
    } else if libm::fabs(turn) <= 180.0 {
        turn
    } else if turn > 180.0 {
        turn - 360.0
    } else {
        turn + 360.0
    };
    let lightness = l2 - l1;
    let chroma = c2 - c1;
    let hue = 2.0 * libm::sqrt(c1 * c2) * libm::sin((hue_step / 2.0).to_radians());

    let mean_l = (l1 + l2) / 2.0;
    let mean_c = (c1 + c2) / 2.0;
    let mean_h = if grey {
        h1 + h2
    } else if libm::fabs(h1 - h2) <= 180.0 {
        (h1 + h2) / 2.0
    } else if h1 + h2 < 360.0 {
        (h1 + h2 + 360.0) / 2.0
    } else {
        (h1 + h2 - 360.0) / 2.0
    };
    let cos = |degrees: f64| libm::cos(degrees.to_radians());
    let t =
        1.0 - 0.17 * cos(mean_h - 30.0) + 0.24 * cos(2.0 * mean_h) + 0.32 * cos(3.0 * mean_h + 6.0)
            - 0.20 * cos(4.0 * mean_h - 63.0);
    let blue = (mean_h - 275.0) / 25.0;
    let turned = 30.0 * libm::exp(-blue * blue);
    let far = (mean_l - 50.0) * (mean_l - 50.0);
    let s_l = 1.0 + 0.015 * far / libm::sqrt(20.0 + far);
    let s_c = 1.0 + 0.045 * mean_c;
    let s_h = 1.0 + 0.015 * mean_c * t;
    let r_t = -libm::sin((2.0 * turned).to_radians()) * 2.0 * seventh(mean_c);
    let (l, c, h) = (lightness / s_l, chroma / s_c, hue / s_h);
    libm::sqrt((l * l + c * c + h * h + r_t * c * h).max(0.0))
}

/// Lightness L* of a luminance, white having 1.
#[inline]
pub(crate) fn lightness(y: f64) -> f64 {
    116.0 * root(y) - 16.0
}

#[inline]
fn check_level(argument: &'static str, level: f64) -> Result<f64, Error> {
    Error::check(argument, level, 0.0, 255.0)
}

#[inline]
fn check_stimulus(argument: &'static str, value: f64) -> Result<f64, Error> {
    Error::check(argument, value, 0.0, 2.0)
}

#[inline]
fn check_lab(names: [&'static str; 3], [l, a, b]: [f64; 3]) -> Result<[f64; 3], Error> {
    Ok([
        Error::check(names[0], l, 0.0, 100.0)?,
        Error::check(names[1], a, -200.0, 200.0)?,
        Error::check(names[2], b, -200.0, 200.0)?,
    ])
}

#[inline]
fn decode(level: f64) -> f64 {
    let c = level / 255.0;
    if c <= 0.04045 {
        c / 12.92
    } else {
        libm::pow((c + 0.055) / 1.055, 2.4)
    }
}

#[inline]
fn encode(light: f64) -> f64 {
    255.0
        * if light <= 0.0031308 {
            12.92 * light
        } else {
            1.055 * libm::pow(light, 1.0 / 2.4) - 0.055
        }
}

#[inline]
fn product(matrix: &[[f64; 3]; 3], [p, q, r]: [f64; 3]) -> [f64; 3] {
    matrix.map(|row| row[0] * p + row[1] * q + row[2] * r)
}

#[inline]
fn levels(Xyz { x, y, z }: Xyz) -> Srgb {
    // A rounding outside is inside.
    const HAIR: f64 = 1e-9;
    let light = product(&FROM_XYZ, [x, y, z]);
    let outside = light
        .iter()
        .filter(|&&share| !(-HAIR..=1.0 + HAIR).contains(&share))
        .count();
    let [red, green, blue] = light.map(|share| encode(share.clamp(0.0, 1.0)));
    Srgb {
        red,
        green,
        blue,
        outside: outside as u32,
    }
}

/// Tristimulus values of a white with a luminance of 1.
#[inline]
fn white((x, y): (f64, f64)) -> Xyz {
    Xyz {
        x: x / y,
        y: 1.0,
        z: (1.0 - x - y) / y,
    }
}

#[inline]
fn root(share: f64) -> f64 {
    if share > LINE_BELOW {
        libm::cbrt(share)
    } else {
        (LINE_SLOPE * share + 16.0) / 116.0
    }
}

#[inline]
fn cube(root: f64) -> f64 {
    let share = root * root * root;
    if share > LINE_BELOW {
        share
    } else {
        (116.0 * root - 16.0) / LINE_SLOPE
    }
}

#[inline]
fn lab(colour: Xyz, chromaticity: (f64, f64)) -> Lab {
    let white = white(chromaticity);
    let x = root(colour.x / white.x);
    let y = root(colour.y);
    let z = root(colour.z / white.z);
    Lab {
        l: 116.0 * y - 16.0,
        a: 500.0 * (x - y),
        b: 200.0 * (y - z),
    }
}

#[inline]
fn from_lab(l: f64, a: f64, b: f64) -> Xyz {
    let white = white(D65);
    let y = (l + 16.0) / 116.0;
    Xyz {
        x: white.x * cube(y + a / 500.0),
        y: cube(y),
        z: white.z * cube(y - b / 200.0),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_screen_colour_comes_back() {
        let steps = [0.0, 1.0, 10.0, 11.0, 64.0, 128.0, 200.0, 254.0, 255.0];
        for red in steps {
            for green in steps {
                for blue in steps {
                    let lab = lab_from_srgb(red, green, blue).unwrap();
                    let back = srgb_from_lab(lab.l.clamp(0.0, 100.0), lab.a, lab.b).unwrap();
                    approx::assert_abs_diff_eq!(back.red, red, epsilon = 1e-6);
                    approx::assert_abs_diff_eq!(back.green, green, epsilon = 1e-6);
                    approx::assert_abs_diff_eq!(back.blue, blue, epsilon = 1e-6);
                    assert_eq!(back.outside, 0);
                }
            }
        }
    }

    #[test]
    fn a_difference_is_the_same_either_way_and_zero_to_itself() {
        for (a1, b1) in [(0.0, 0.0), (30.0, -12.0), (-80.0, 77.0), (1.0, -110.0)] {
            for (a2, b2) in [(0.0, 0.0), (31.0, -15.0), (12.0, 90.0), (-4.0, -100.0)] {
                let there = ciede2000(40.0, a1, b1, 55.0, a2, b2).unwrap();
                let back = ciede2000(55.0, a2, b2, 40.0, a1, b1).unwrap();
                approx::assert_relative_eq!(there, back, max_relative = 1e-12);
                assert!(there > 0.0);
            }
            assert_eq!(ciede2000(40.0, a1, b1, 40.0, a1, b1).unwrap(), 0.0);
        }
    }
}
