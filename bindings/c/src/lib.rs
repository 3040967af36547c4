//! The C door: every scalar and list function of the core, generated; cut lines by arrays, shapes by
//! handles and plans by strings, written by hand.
//!
//! Conventions: a function returns a status, 0 for success; answers go to `out`, written only on
//! success; `error` may be NULL, else it says on failure which argument was wrong and what would do.
#![cfg_attr(not(feature = "std"), no_std)]
#![allow(non_camel_case_types, reason = "the names are C's")]

pub mod boundary;
#[rustfmt::skip]
#[allow(clippy::undocumented_unsafe_blocks, reason = "each says what its caller promises")]
pub mod generated;
#[cfg(feature = "std")]
pub mod outline;
#[cfg(feature = "std")]
pub mod plan;
#[cfg(feature = "std")]
pub mod shapes;

/// Nothing in the library panics; were it to, a device stops here rather than run on.
#[cfg(not(feature = "std"))]
#[panic_handler]
fn panic(_: &core::panic::PanicInfo<'_>) -> ! {
    loop {
        core::hint::spin_loop();
    }
}
