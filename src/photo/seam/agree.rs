//! Several looks at one seam: whether one of them is beyond doubt, or enough of them come to the same.

/// What one look says.
#[derive(Clone, Copy, Debug)]
pub(super) struct Voice {
    /// Pixels of the picture in a stitch: what it has to agree on with the others.
    pub(super) px_per_stitch: f64,
    /// Stitches it counted.
    pub(super) stitches: usize,
    /// How surely it is right, logarithm of the odds.
    pub(super) trust: f32,
    /// Coefficient of variation of the length of its stitches.
    pub(super) unevenness: f64,
    /// Whether its stitches show about as strongly one as the other.
    pub(super) clear: bool,
}

/// Trust from which the first look is taken at its word: odds of 55 to 1 (judgement).
pub(super) const SURE: f32 = 4.0;
/// How uneven stitches may be for that: very uneven ones are lost more easily than the odds know.
pub(super) const SURE_UNEVEN: f64 = 0.09;

/// Stitches by which looks that agree may differ over the whole row. Half of one is as near to one more as to none.
const APART: f64 = 0.5;

/// How much a look that says otherwise counts against those that agree (judgement: it may be the one that is right).
const AGAINST: f32 = 2.0;

/// Trust of one look counts up to here: five looks at one picture err together, so that none of them alone can carry an answer.
const MOST_TRUST: f32 = 5.0;

/// Unevenness up to which looks that agree are believed, when others do not agree and when all do (judgement: beyond, half of the answers had
/// lost a stitch).
const MOST_UNEVEN: f64 = 0.125;
const MOST_UNEVEN_OF_ALL: f64 = 0.17;

/// Looks to be had where stitches do not show alike: what misleads two or three of them may not mislead the last.
const LOOKS_OF_PATCHY: usize = 4;

/// The look to answer with, when two or more agree and their trust together, less twice that of those that say otherwise, reaches `enough`. A look
/// without a reading has no voice, but it is missed.
pub(super) fn agreed(voices: &[Option<Voice>], enough: f32) -> Option<usize> {
    let heard: Vec<usize> = (0..voices.len()).filter(|n| voices[*n].is_some()).collect();
    let group = likeliest(voices, &heard)?;
    let weight = |n: &usize| voices[*n].map_or(0.0, |voice| voice.trust.clamp(0.0, MOST_TRUST));
    let (mut by_pitch, others): (Vec<usize>, Vec<usize>) = heard.iter().partition(|n| group.contains(n));
    let trust = by_pitch.iter().map(weight).sum::<f32>() - AGAINST * others.iter().map(weight).sum::<f32>();
    let mut uneven: Vec<f64> = by_pitch.iter().filter_map(|n| Some(voices[*n]?.unevenness)).collect();
    uneven.sort_unstable_by(f64::total_cmp);
    let allowed = if by_pitch.len() == voices.len() { MOST_UNEVEN_OF_ALL } else { MOST_UNEVEN };
    if by_pitch.len() < 2 || trust <= enough || uneven[uneven.len() / 2] >= allowed {
        return None;
    }
    let answer = spokesman(voices, &mut by_pitch)?;
    (voices.len() >= LOOKS_OF_PATCHY || voices[answer].is_some_and(|voice| voice.clear)).then_some(answer)
}

/// Which of looks that agree speaks for them.
fn spokesman(voices: &[Option<Voice>], by_pitch: &mut [usize]) -> Option<usize> {
    let key = |n: &usize| voices[*n].map_or(0.0, |voice| voice.px_per_stitch);
    by_pitch.sort_unstable_by(|a, b| key(a).total_cmp(&key(b)));
    if by_pitch.len() % 2 == 1 {
        // The middle one: what one look lost, another may have found.
        return by_pitch.get(by_pitch.len() / 2).copied();
    }
    let sureness = |n: &usize| voices[*n].map_or(f32::MIN, |voice| voice.trust);
    by_pitch.iter().copied().max_by(|a, b| sureness(a).total_cmp(&sureness(b)))
}

/// The looks that agree with each other and are most trusted together; of equals the larger group.
fn likeliest(voices: &[Option<Voice>], heard: &[usize]) -> Option<Vec<usize>> {
    let groups = (1_u32..1 << heard.len()).map(|mask| -> Vec<usize> {
        heard.iter().enumerate().filter(|(bit, _)| mask & (1 << bit) != 0).map(|(_, n)| *n).collect()
    });
    let trust =
        |group: &[usize]| group.iter().filter_map(|n| voices[*n]).map(|voice| voice.trust.clamp(0.0, MOST_TRUST)).sum::<f32>();
    groups
        .filter(|group| is_one(&group.iter().filter_map(|n| voices[*n]).collect::<Vec<_>>()))
        .max_by(|a, b| trust(a).total_cmp(&trust(b)).then(a.len().cmp(&b.len())))
}

/// Whether looks count the same.
fn is_one(group: &[Voice]) -> bool {
    let px = |voice: &Voice| voice.px_per_stitch;
    let (low, high) = (group.iter().map(px).fold(f64::MAX, f64::min), group.iter().map(px).fold(0.0, f64::max));
    let mut stitches: Vec<usize> = group.iter().map(|voice| voice.stitches).collect();
    stitches.sort_unstable();
    stitches.get(stitches.len() / 2).is_some_and(|stitches| (high / low - 1.0) * *stitches as f64 <= APART)
}

/// Two looks that are each fairly sure and count differently, the surer first.
pub(super) fn rivals(voices: &[Option<Voice>]) -> Option<(usize, usize)> {
    let mut heard: Vec<(usize, Voice)> = voices.iter().enumerate().filter_map(|(n, voice)| Some((n, (*voice)?))).collect();
    heard.sort_by(|a, b| b.1.trust.total_cmp(&a.1.trust));
    let (first, surest) = *heard.first()?;
    let other = heard.iter().find(|(_, voice)| (voice.px_per_stitch / surest.px_per_stitch - 1.0).abs() > 0.06)?;
    Some((first, other.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn voice(px_per_stitch: f64, trust: f32) -> Option<Voice> {
        Some(Voice { px_per_stitch, stitches: 20, trust, unevenness: 0.05, clear: true })
    }

    #[test]
    fn looks_that_count_the_same_are_believed_together_and_not_alone() {
        assert_eq!(agreed(&[voice(30.0, 4.9), None, None], 4.0), None);
        assert_eq!(agreed(&[voice(30.0, 2.5), None, None], 4.0), None);
        assert_eq!(agreed(&[voice(30.0, 2.5), voice(30.3, 2.6), None], 4.0), Some(1));
        assert_eq!(agreed(&[voice(30.0, 1.5), voice(30.3, 1.6), None], 4.0), None);
    }

    #[test]
    fn a_look_that_counts_one_stitch_more_speaks_against() {
        // One in twenty: 28.5 for 30.
        assert_eq!(agreed(&[voice(30.0, 2.5), voice(30.1, 2.5), voice(28.5, 0.4)], 4.0), Some(1));
        assert_eq!(agreed(&[voice(30.0, 2.5), voice(30.1, 2.5), voice(28.5, 0.6)], 4.0), None);
    }

    #[test]
    fn of_three_that_agree_the_middle_one_answers() {
        assert_eq!(agreed(&[voice(30.2, 2.0), voice(30.5, 4.0), voice(30.0, 3.0)], 4.0), Some(0));
    }

    #[test]
    fn very_uneven_stitches_need_every_look() {
        let uneven = |px| Some(Voice { px_per_stitch: px, stitches: 20, trust: 3.0, unevenness: 0.15, clear: true });
        assert_eq!(agreed(&[uneven(30.0), uneven(30.1), None], 4.0), None);
        assert_eq!(agreed(&[uneven(30.0), uneven(30.1), uneven(30.2)], 4.0), Some(1));
    }

    #[test]
    fn looks_at_stitches_that_do_not_show_alike_need_the_fourth() {
        let patchy = |px| voice(px, 4.0).map(|voice| Voice { clear: false, ..voice });
        assert_eq!(agreed(&[patchy(30.0), patchy(30.1), patchy(30.2)], 4.0), None);
        assert_eq!(agreed(&[patchy(30.0), patchy(30.1), patchy(30.2), voice(31.5, 5.0)], 4.0), None);
        assert_eq!(agreed(&[patchy(30.0), patchy(30.1), patchy(30.2), None], 4.0), Some(1));
    }

    #[test]
    fn no_look_is_no_answer_and_no_rival() {
        assert_eq!(agreed(&[], 4.0), None);
        assert_eq!(agreed(&[None, None], 0.0), None);
        assert_eq!(rivals(&[voice(30.0, 1.0), voice(30.2, 2.0)]), None);
        assert_eq!(rivals(&[voice(30.0, 1.0), voice(60.0, 2.0), None]), Some((1, 0)));
    }
}
