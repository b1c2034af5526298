//! Who serves: workers put in charge, left behind, taken back and let go.

use std::sync::Arc;
use std::time::Instant;

use super::super::worker::{WorkerId, hire};
use super::super::{Loss, News};
use super::{Asked, Call, MOST_UNENDED, Proof, Speaking, Standing, Supervisor, Worker};

impl Supervisor {
    /// Puts a new worker in charge, if there is room for one.
    pub(super) fn recruit(&mut self) {
        self.retry_at = None;
        if self.crew.len() >= self.patience.most_workers {
            return;
        }
        self.last_worker += 1;
        let id = self.last_worker;
        match hire(id, Arc::clone(&self.make), self.inbox.clone()) {
            Ok(orders) => {
                let call = Call {
                    what: Asked::Open,
                    due: Instant::now() + self.patience.opening,
                };
                self.crew.insert(
                    id,
                    Worker {
                        orders: Some(orders),
                        call: Some(call),
                        manner: None,
                        early: Vec::new(),
                    },
                );
                self.in_charge = Some(id);
            }
            Err(error) => self.lose(&Loss::NoService(error.to_string())),
        }
    }

    pub(super) fn let_go(&mut self, id: WorkerId) {
        if let Some(worker) = self.crew.get_mut(&id) {
            worker.orders = None;
        }
    }

    /// The worker's thread has ended. If that was the one in charge, its voice has panicked.
    pub(super) fn gone(&mut self, id: WorkerId) {
        self.crew.remove(&id);
        if self.in_charge == Some(id) {
            self.lose(&Loss::Broken("its voice failed".to_owned()));
        } else if self.in_charge.is_none() && self.retry_at.is_none() {
            self.retry_at = Some(Instant::now() + self.patience.retry);
        }
    }

    /// A worker left behind has had its answer after all.
    pub(super) fn returned(&mut self, id: WorkerId, alive: bool) {
        let served = self
            .in_charge
            .is_some_and(|id| self.crew.get(&id).is_some_and(Worker::is_open));
        if !alive || served {
            self.let_go(id);
            if self.in_charge.is_none() {
                let soon = Instant::now() + self.patience.retry;
                self.retry_at = Some(self.retry_at.map_or(soon, |at| at.min(soon)));
            }
            return;
        }
        self.in_charge = Some(id);
        self.retry_at = None;
        // The call that hung may have begun an old text.
        self.hush = self.wish.is_none();
        self.opened();
    }

    /// There is a connection again. If there is a text to prove it with, wait for that.
    pub(super) fn opened(&mut self) {
        match self.standing {
            Standing::Starting => self.found(),
            Standing::Lost(Proof::Beginning) if self.wish.is_none() => self.found(),
            Standing::Ready | Standing::Lost(_) => {}
        }
    }

    pub(super) fn found(&mut self) {
        self.standing = Standing::Ready;
        self.tell(News::Ready);
    }

    /// The voice is lost, or still lost. Says so the first time, keeps what was being said as the
    /// wish, and decides whether the connection is worth keeping.
    pub(super) fn lose(&mut self, loss: &Loss) {
        let first = !matches!(self.standing, Standing::Lost(_));
        if first {
            self.standing = Standing::Lost(match loss {
                Loss::NeverEnded => Proof::Ending,
                _ => Proof::Beginning,
            });
            self.tell(News::Lost(loss.clone()));
        }
        if let Some(Speaking { mut wish, .. }) = self.speaking.take() {
            wish.unended += u8::from(*loss == Loss::NeverEnded);
            if wish.unended < MOST_UNENDED {
                self.wish = Some(wish);
            } else {
                self.hush = true;
                self.tell(News::CutOff(wish.id));
            }
        }
        let now = Instant::now();
        match loss {
            Loss::Refused(_) => self.hold_until = Some(now + self.patience.retry),
            // A new connection may help, once; after that the old one is as good as any.
            Loss::NeverBegan | Loss::NeverEnded if !first => {}
            Loss::NeverBegan | Loss::NeverEnded => self.replace_chief(now, true),
            Loss::NoAnswer => {
                // Left behind in its call, and not let go: it may come back.
                self.in_charge = None;
                let opening = self.crew.values().any(|worker| !worker.is_open());
                self.retry_at = Some(match (opening, first) {
                    (true, _) => now + self.patience.slow_retry,
                    (false, true) => now,
                    (false, false) => now + self.patience.retry,
                });
            }
            Loss::Broken(_) => self.replace_chief(now, first),
            Loss::NoService(_) => self.replace_chief(now, false),
        }
    }

    pub(super) fn replace_chief(&mut self, now: Instant, at_once: bool) {
        if let Some(id) = self.in_charge.take() {
            self.let_go(id);
        }
        self.retry_at = Some(if at_once {
            now
        } else {
            now + self.patience.retry
        });
    }
}
