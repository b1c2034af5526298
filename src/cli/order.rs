//! `marlinspeak order`: several pieces at once, what they come to, and keeping them.

use std::io::{self, Read as _, Write};
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use clap::{Args, Subcommand};

use super::complaint::Complaint;
use super::error_lines::ErrorLines;
use super::order_forms::{AnswerForm, KeptForm, ListForm};
use super::print::{json, print};
use super::setup_options::{PriceOptions, ledger, presets_failed};
use crate::bench::Prices;
use crate::files::{self, FileError, LARGEST_DOCUMENT};
use crate::guide::{Order, OrderAnswer, Presets};
use crate::session::{answer_order, tied};
use crate::shelf::{
    DocumentError, KeptOrder, OrderId, Orders, PresetsFile, Shelf, ShelfError, ShelfReading, Tie,
    read_order_said,
};
use crate::words::{Sentence, Words, shown_name};

#[derive(Args)]
pub(super) struct OrderOptions {
    #[command(subcommand)]
    command: OrderCommand,
}

#[derive(Subcommand)]
enum OrderCommand {
    #[command(about = "help-order-list")]
    List {
        #[arg(long, help = "help-json")]
        json: bool,
    },
    #[command(about = "help-order-show")]
    Show {
        #[arg(value_name = "value-order", help = "help-order-name")]
        order: String,
        #[command(flatten)]
        prices: PriceOptions,
        #[arg(long, help = "help-json")]
        json: bool,
    },
    #[command(about = "help-order-plan")]
    Plan {
        #[arg(value_name = "value-file", help = "help-order-file")]
        file: PathBuf,
        #[command(flatten)]
        prices: PriceOptions,
        #[arg(long, help = "help-json")]
        json: bool,
    },
    #[command(about = "help-order-keep")]
    Keep {
        #[arg(value_name = "value-file", help = "help-order-file")]
        file: PathBuf,
        #[arg(long = "as", value_name = "value-order", help = "help-order-as")]
        instead: Option<String>,
    },
    #[command(about = "help-order-delete")]
    Delete {
        #[arg(value_name = "value-order", help = "help-order-name")]
        order: String,
    },
    #[command(about = "help-order-undo")]
    Undo {
        #[arg(value_name = "value-order", help = "help-order-name")]
        order: String,
    },
}

/// Does what is asked and gives the exit code.
pub(super) fn run(asked: &OrderOptions, set: Prices, words: &Words) -> Result<ExitCode, Complaint> {
    let orders = Orders::default_place().map_err(|error| complaint(&error, words))?;
    let runner = Runner { orders, set, words };
    match &asked.command {
        OrderCommand::List { json } => runner.list(*json),
        OrderCommand::Show {
            order,
            prices,
            json,
        } => {
            let mut errors = ErrorLines::new(words);
            let kept = runner.look(order)?.hand_on(&mut errors);
            runner.tell(Some(&kept), &kept.order, prices, *json)?;
            Ok(errors.exit_code())
        }
        OrderCommand::Plan { file, prices, json } => {
            runner.tell(None, &said(file, words)?, prices, *json)?;
            Ok(ExitCode::SUCCESS)
        }
        OrderCommand::Keep { file, instead } => runner.keep(file, instead.as_deref()),
        OrderCommand::Delete { order } => {
            let id = runner.id(order)?;
            runner.done(runner.orders.delete(&id))?;
            runner.say("order-deleted", &id)
        }
        OrderCommand::Undo { order } => {
            let id = runner.id(order)?;
            let mut errors = ErrorLines::new(words);
            let back = runner.done(runner.orders.undo_delete(&id))?;
            runner.say("order-undone", &back.hand_on(&mut errors))?;
            Ok(errors.exit_code())
        }
    }
}

/// A name that no order has and a file that is none are slips of the command line; the rest fails
/// at run time.
pub(super) fn complaint(error: &ShelfError, words: &Words) -> Complaint {
    log::warn!("{}", error.cause());
    let sentence = words.shelf_error(error);
    match error {
        ShelfError::NoSuchOrder { .. } => Complaint::input(sentence),
        _ => Complaint::failure(sentence),
    }
}

/// The order of this name, as it was typed.
pub(super) fn id(given: &str, words: &Words) -> Result<OrderId, Complaint> {
    let none = || Complaint::input(words.notice("order-none-of-name", &[("given", given)]));
    OrderId::parse(given).ok_or_else(none)
}

/// What an order comes to, with what is kept by name and what the log has learnt.
pub(super) fn answer(
    order: &Order,
    prices: Prices,
    words: &Words,
) -> Result<OrderAnswer, Complaint> {
    let presets = if order.may_name_a_preset() {
        let read = PresetsFile::default_place().and_then(|file| file.read());
        let presets = read.map_err(|error| presets_failed(&error, words))?;
        presets.hand_on(&mut ErrorLines::new(words))
    } else {
        Presets::default()
    };
    let answer = answer_order(order, &presets, &ledger(words)?, prices);
    answer.map_err(|error| Complaint::input(words.order_error(&error)))
}

/// The order that is kept by this name.
pub(super) fn kept(given: &str, words: &Words) -> Result<Order, Complaint> {
    let id = id(given, words)?;
    let looked = Orders::default_place().and_then(|orders| orders.look(&id));
    let kept = looked.map_err(|error| complaint(&error, words))?;
    Ok(kept.hand_on(&mut ErrorLines::new(words)).order)
}

/// The order in a file, all of whose fields mean something.
pub(super) fn said(file: &Path, words: &Words) -> Result<Order, Complaint> {
    let not_read = |error: FileError<DocumentError>| {
        log::warn!("{}", error.cause());
        let is_slip = matches!(error, FileError::Unreadable { .. });
        let sentence = words.shelf_error(&ShelfError::File(error));
        if is_slip {
            Complaint::input(sentence)
        } else {
            Complaint::failure(sentence)
        }
    };
    let document = if file == Path::new("-") {
        let mut document = Vec::new();
        // A byte more than is read shows that it is too large.
        let read = io::stdin()
            .take(LARGEST_DOCUMENT + 1)
            .read_to_end(&mut document);
        read.map_err(|fault| not_read(FileError::io(files::FileAction::Read, file)(fault)))?;
        document
    } else {
        files::read_bytes(file, LARGEST_DOCUMENT).map_err(|error| not_read(error.of_kind()))?
    };
    let stored =
        read_order_said(&document).map_err(|fault| not_read(FileError::unreadable(file)(fault)))?;
    if let Some((field, piece)) = stored.first_unknown() {
        let sentence = words.order_field_unknown(field, piece);
        return Err(Complaint::input(sentence));
    }
    match stored.first_long() {
        Some(long) => Err(Complaint::input(words.order_text_long(long))),
        None => Ok(stored.order),
    }
}

struct Runner<'a> {
    orders: Orders,
    set: Prices,
    words: &'a Words,
}

impl Runner<'_> {
    fn done<T>(&self, result: Result<T, ShelfError>) -> Result<T, Complaint> {
        result.map_err(|error| complaint(&error, self.words))
    }

    fn id(&self, given: &str) -> Result<OrderId, Complaint> {
        id(given, self.words)
    }

    fn look(&self, given: &str) -> Result<ShelfReading<KeptOrder>, Complaint> {
        let id = self.id(given)?;
        self.done(self.orders.look(&id))
    }

    fn say(&self, message: &str, id: &OrderId) -> Result<ExitCode, Complaint> {
        let line = self.words.plainly(message, &[("id", id.as_str())]);
        print(self.words, |out| writeln!(out, "{line}"))?;
        Ok(ExitCode::SUCCESS)
    }

    fn keep(&self, file: &Path, instead: Option<&str>) -> Result<ExitCode, Complaint> {
        let order = said(file, self.words)?;
        // What cannot be tied is not kept either.
        answer(&order, self.set, self.words)?;
        let mut errors = ErrorLines::new(self.words);
        let kept = match instead {
            None => self.done(self.orders.keep(order))?,
            Some(given) => {
                let id = self.id(given)?;
                let changed = self.orders.change(&id, |kept| *kept = order);
                self.done(changed)?.hand_on(&mut errors)
            }
        };
        self.say("order-kept", &kept.id)?;
        Ok(errors.exit_code())
    }

    fn list(&self, is_json: bool) -> Result<ExitCode, Complaint> {
        let listed = self.done(self.orders.list())?;
        let troubles = listed.troubles().iter();
        let troubles = troubles.map(|trouble| self.words.shelf_trouble(trouble).into());
        let troubles = troubles.collect();
        let mut errors = ErrorLines::new(self.words);
        let orders = listed.hand_on(&mut errors);
        print(self.words, |out| {
            if is_json {
                let orders = orders.iter().map(KeptForm::of).collect();
                return json(out, &ListForm { orders, troubles });
            }
            if orders.is_empty() {
                writeln!(out, "{}", self.words.orders_none(self.orders.folder()))?;
            }
            for kept in &orders {
                let knots = kept.order.count();
                let heading = self.words.order_heading(&kept.order.name, knots);
                writeln!(out, "{:10}  {heading}", kept.id.as_str())?;
            }
            Ok(())
        })?;
        Ok(errors.exit_code())
    }

    fn tell(
        &self,
        kept: Option<&KeptOrder>,
        order: &Order,
        prices: &PriceOptions,
        is_json: bool,
    ) -> Result<(), Complaint> {
        let prices = prices.prices(self.set, self.words)?;
        let answer = answer(order, prices, self.words)?;
        let tied = self.tied(kept.map(|kept| &kept.id), &answer)?;
        print(self.words, |out| {
            if is_json {
                let form = AnswerForm::of(kept.map(|kept| &kept.id), order, &answer, &tied);
                return json(out, &form.map_err(io::Error::other)?);
            }
            self.write(out, order, &answer, &tied)
        })
    }

    /// How many of each piece are tied; nothing of an order that is not kept.
    fn tied(
        &self,
        kept: Option<&OrderId>,
        answer: &OrderAnswer,
    ) -> Result<Vec<Option<u16>>, Complaint> {
        let ties: Vec<Tie> = match kept {
            Some(_) => {
                let folder = self.done(Shelf::default_dir())?;
                let listed = self.done(Shelf::open(folder).and_then(|shelf| shelf.list()))?;
                listed.hand_on(&mut ErrorLines::new(self.words))
            }
            None => Vec::new(),
        };
        let pieces = answer.pieces.iter();
        Ok(pieces
            .map(|one| kept.map(|id| tied(&ties, id, &one.piece)))
            .collect())
    }

    fn write(
        &self,
        out: &mut impl Write,
        order: &Order,
        answer: &OrderAnswer,
        tied: &[Option<u16>],
    ) -> io::Result<()> {
        let words = self.words;
        writeln!(out, "{}", words.order_heading(&order.name, answer.count()))?;
        if !order.note.trim().is_empty() {
            writeln!(out, "{}", shown_name(&order.note))?;
        }
        for (piece, tied) in answer.pieces.iter().zip(tied) {
            writeln!(
                out,
                "{:3}  {}",
                piece.piece.number,
                words.order_piece(piece)
            )?;
            if let Some(tied) = tied.filter(|tied| *tied > 0) {
                let told = words.order_piece_tied(tied, piece.piece.count);
                writeln!(out, "     {told}")?;
            }
        }
        writeln!(out, "\n{}", words.plainly("order-to-buy", &[]))?;
        for cord in &answer.to_buy {
            let mut lines = words.order_cord(cord, answer.spool).into_iter();
            if let Some(heading) = lines.next() {
                writeln!(out, "     {heading}")?;
            }
            for line in lines {
                writeln!(out, "       {line}")?;
            }
        }
        writeln!(out, "\n{}", words.plainly("order-bag", &[]))?;
        for item in &answer.bag {
            writeln!(out, "     {}", words.kit_line(item))?;
        }
        let mut places = words.order_stick(answer).into_iter();
        if let Some(heading) = places.next() {
            writeln!(out, "\n{heading}")?;
        }
        for place in places {
            writeln!(out, "     {place}")?;
        }
        let time: Sentence = words.order_time(answer);
        writeln!(out, "\n{time}")
    }
}
