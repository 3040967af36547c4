//! Units of length: multiply to enter, divide to leave.
//!
//! ```
//! use recloth::units::{CM, INCH};
//! let waist = 28.5 * INCH;
//! assert_eq!(waist, 723.9);
//! assert_eq!(waist / CM, 72.39);
//! ```

/// One millimetre, the unit of every bare length.
pub const MM: f64 = 1.0;
/// One centimetre in millimetres.
pub const CM: f64 = 10.0;
/// One metre in millimetres.
pub const M: f64 = 1000.0;
/// One inch in millimetres, exact by definition (international yard and pound agreement, 1959).
pub const INCH: f64 = 25.4;
/// One foot in millimetres.
pub const FOOT: f64 = 304.8;
/// One yard in millimetres.
pub const YARD: f64 = 914.4;
