//! The same calls on other machines: the C library for them without std, linked into the program
//! that reads `tests/vectors`, runs under an emulator and must give the bits Rust gives here.

use std::{fs, path::Path, process::Command};

use super::{
    c::STRICT,
    device::archive,
    doors::Reference,
    run::{Context, Count, output, quiet},
};

struct Machine {
    name: &'static str,
    /// Its name for rustc.
    target: &'static str,
    kind: Kind,
}

enum Kind {
    /// Linux under qemu's user mode, with the C library of zig: its name for zig, and the emulator.
    Linux(&'static str, &'static str),
    /// A board with 4 MB for the program and 4 MB to work in. Its C library reads the host's files
    /// by semihosting.
    CortexM,
    /// Node, by the system interface WASI.
    Wasm,
}

const MACHINES: &[Machine] = &[
    Machine {
        name: "Cortex-M",
        target: "thumbv6m-none-eabi",
        kind: Kind::CortexM,
    },
    Machine {
        name: "aarch64",
        target: "aarch64-unknown-linux-musl",
        kind: Kind::Linux("aarch64-linux-musl", "qemu-aarch64"),
    },
    Machine {
        name: "i686",
        target: "i686-unknown-linux-musl",
        kind: Kind::Linux("x86-linux-musl", "qemu-i386"),
    },
    Machine {
        name: "s390x, big-endian",
        target: "s390x-unknown-linux-gnu",
        kind: Kind::Linux("s390x-linux-musl", "qemu-s390x"),
    },
    Machine {
        name: "WebAssembly",
        target: "wasm32-unknown-unknown",
        kind: Kind::Wasm,
    },
];

pub(crate) fn tests(context: &Context) -> Result<Count, String> {
    // The folder all programs run in: a device is told short names, without blanks.
    let folder = context.fresh("machines")?;
    let reference = Reference::new(context, &folder.join("calls"))?;
    let rows = folder.join("vectors");
    fs::create_dir(&rows)
        .and_then(|()| {
            for file in fs::read_dir(context.root.join("tests/vectors"))? {
                let file = file?;
                fs::copy(file.path(), rows.join(file.file_name()))?;
            }
            Ok(())
        })
        .map_err(|error| format!("{}: {error}", rows.display()))?;
    let mut count = Count::default();
    for machine in MACHINES {
        count = count
            + match machine.ready(context) {
                Err(what) => Count::skipped(&format!("{}: {what}", machine.name)),
                Ok(()) => {
                    let answers = machine.answers(context, &folder)?;
                    reference.compare(machine.name, &answers)?
                }
            };
    }
    Ok(count)
}

impl Machine {
    /// An error that names what is missing.
    fn ready(&self, context: &Context) -> Result<(), String> {
        match self.kind {
            Kind::Linux(_, emulator) => context.program(emulator, "qemu-user")?,
            Kind::Wasm => context.program("node", "nodejs")?,
            Kind::CortexM => {
                context.program("qemu-system-arm", "qemu-system-arm")?;
                let compiler = "arm-none-eabi-gcc --specs=picolibc.specs";
                context.program(compiler, "picolibc-arm-none-eabi")?;
            }
        }
        context.rust_target(self.target)
    }

    /// What the program prints on this machine.
    fn answers(&self, context: &Context, folder: &Path) -> Result<String, String> {
        let program = folder.join(self.target);
        let mut compile = self.compiler(context)?;
        compile
            .args(STRICT)
            .args(["-std=c99", "-O1", "-Ibindings/c/include"])
            .arg("bindings/c/tests/vectors.c")
            .arg(archive(context, self.target, "")?)
            .arg("-o")
            .arg(&program);
        quiet(compile)?;
        let words = ["answers", "vectors", "calls"];
        let mut run = match self.kind {
            Kind::Linux(_, emulator) => context.command(emulator, [self.target]),
            Kind::Wasm => {
                let runner = context.root.join("bindings/c/tests/wasi.mjs");
                let mut run = context.command("node", ["--no-warnings"]);
                run.arg(runner).arg(self.target);
                run
            }
            Kind::CortexM => {
                let board = "-machine mps2-an385 -display none -monitor none -serial none \
                             -chardev stdio,id=host -kernel";
                let mut run = context.command("qemu-system-arm", board.split_whitespace());
                let given = words.map(|word| format!(",arg={word}")).concat();
                run.arg(self.target).args([
                    "-semihosting-config",
                    &format!("enable=on,target=native,chardev=host{given}"),
                ]);
                run
            }
        };
        if !matches!(self.kind, Kind::CortexM) {
            run.args(words);
        }
        output(run.current_dir(folder))
    }

    /// The compiler, with what it must know of the machine.
    fn compiler(&self, context: &Context) -> Result<Command, String> {
        let zig = |target: &str| -> Result<Command, String> {
            Ok(context.command(
                context.python()?,
                ["-m", "ziglang", "cc", "-target", target],
            ))
        };
        Ok(match self.kind {
            Kind::Linux(target, _) => {
                let mut compiler = zig(target)?;
                compiler.args(["-static", "bindings/c/tests/no_unwinding.c"]);
                compiler
            }
            Kind::Wasm => zig("wasm32-wasi")?,
            Kind::CortexM => {
                let mut compiler = context.command(
                    "arm-none-eabi-gcc",
                    [
                        "-mcpu=cortex-m0",
                        "--specs=picolibc.specs",
                        "--oslib=semihost",
                        "--crt0=semihost",
                    ],
                );
                for place in [
                    "__flash=0",
                    "__flash_size=0x400000",
                    "__ram=0x20000000",
                    "__ram_size=0x400000",
                    "__stack_size=0x10000",
                ] {
                    compiler.arg(format!("-Wl,--defsym={place}"));
                }
                // Says of the C library's own assembler files that they leave the stack executable.
                compiler.arg("-Wl,--no-warn-execstack");
                compiler
            }
        })
    }
}
