//! Work too long for one turn. What is worked out for a thousand garments would keep a hand waiting, so whoever asks for it hands in what is
//! to be done between two steps: nothing, or to give the thread back once enough time has passed. Clocks stay outside.

use std::pin::pin;
use std::task::{Context, Poll, Waker};

/// Between two steps of work that nobody waits beside: nothing.
pub async fn without_pause() {}

/// Does all of some work whose pauses are [`without_pause`].
pub fn in_one_turn<T>(work: impl Future<Output = T>) -> T {
    let mut work = pin!(work);
    loop {
        if let Poll::Ready(done) = work.as_mut().poll(&mut Context::from_waker(Waker::noop())) {
            return done;
        }
    }
}

#[cfg(test)]
mod tests {
    use std::cell::Cell;

    use super::*;

    async fn sum(numbers: &[u32], pause: impl AsyncFn()) -> u32 {
        let mut sum = 0;
        for number in numbers {
            sum += number;
            pause().await;
        }
        sum
    }

    #[test]
    fn work_in_one_turn_comes_to_the_same_as_work_with_pauses() {
        assert_eq!(in_one_turn(sum(&[1, 2, 3], without_pause)), 6);
        let pauses = Cell::new(0);
        assert_eq!(in_one_turn(sum(&[1, 2, 3], async || pauses.set(pauses.get() + 1))), 6);
        assert_eq!(pauses.get(), 3);
    }
}
