//! What was found on the pieces of a sample, and how the lot stands by it.

use super::plan::{Aql, Level, LotSize, Plan, plan};

/// How grave a defect is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Severity {
    /// It spoils the looks a little, and nobody would bring the piece back for it.
    Minor,
    /// The piece would be brought back, or sold as a second.
    Major,
    /// It can hurt somebody, or may not be sold by law.
    Critical,
}

impl Severity {
    /// All of them, gravest first.
    pub const ALL: [Severity; 3] = [Severity::Critical, Severity::Major, Severity::Minor];

    /// Name in storage; never renamed once released.
    pub const fn key(self) -> &'static str {
        match self {
            Severity::Critical => "critical",
            Severity::Major => "major",
            Severity::Minor => "minor",
        }
    }

    /// The severity of that name.
    pub fn from_key(key: &str) -> Option<Severity> {
        Severity::ALL.into_iter().find(|severity| severity.key() == key)
    }
}

/// A defect that one looks for.
#[derive(Debug, PartialEq)]
pub struct Defect {
    /// Name in storage; never renamed once released.
    pub key: &'static str,
    /// What is seen, in a few words.
    pub(crate) name: &'static str,
    /// How grave it usually is; a buyer may class it otherwise.
    pub severity: Severity,
}

crate::language::says!(Defect { name });

impl Defect {
    /// A defect that can hurt somebody or may not be sold.
    pub const fn critical(key: &'static str, name: &'static str) -> Defect {
        Defect { key, name, severity: Severity::Critical }
    }

    /// A defect for which a piece would be brought back.
    pub const fn major(key: &'static str, name: &'static str) -> Defect {
        Defect { key, name, severity: Severity::Major }
    }

    /// A defect that spoils the looks a little.
    pub const fn minor(key: &'static str, name: &'static str) -> Defect {
        Defect { key, name, severity: Severity::Minor }
    }
}

/// One defect found on one piece.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// The piece, counted from 1 in the order of the sample.
    pub piece: u32,
    /// What was found: the key of a known defect, or words of one's own.
    pub what: String,
    /// How grave it is here.
    pub severity: Severity,
}

/// What was agreed for a lot, how far one has come, and what was found.
#[derive(Clone, Debug, PartialEq)]
pub struct Log {
    /// Pieces offered together.
    pub lot: LotSize,
    /// How closely it is looked at.
    pub level: Level,
    /// The limit for major defects.
    pub major: Aql,
    /// The limit for minor defects.
    pub minor: Aql,
    /// Pieces looked at so far.
    pub looked_at: u32,
    /// What was found, in the order in which it was found.
    pub findings: Vec<Finding>,
}

/// How a lot stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stands {
    /// So many pieces are left to look at.
    Open(u32),
    /// All were looked at, and no more were bad than may be.
    Passes,
    /// More were bad than may be; whoever has looked at fewer pieces than the plan says may stop.
    Fails,
}

/// How a lot stands for one class of defects.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Standing {
    /// The class.
    pub severity: Severity,
    /// Pieces to look at.
    pub sample: u32,
    /// So many bad pieces still pass.
    pub accept: u32,
    /// Bad pieces so far.
    pub bad: u32,
    /// What follows.
    pub stands: Stands,
}

impl Log {
    /// Longest words kept of a finding, in characters.
    pub const LONGEST_TEXT: usize = 200;
    /// Most findings kept: more would say no more.
    pub const MOST_FINDINGS: usize = 1000;

    /// Whether it can be kept as it stands: no more looked at than the lot has, each finding on a piece of the lot and in words that are not
    /// too long, and not too many of them.
    pub fn is_whole(&self) -> bool {
        let fits = |found: &Finding| {
            (1..=self.lot.pieces()).contains(&found.piece)
                && !found.what.trim().is_empty()
                && found.what.chars().count() <= Log::LONGEST_TEXT
        };
        self.looked_at <= self.lot.pieces() && self.findings.len() <= Log::MOST_FINDINGS && self.findings.iter().all(fits)
    }

    /// A lot of which nothing was looked at yet, with the limits that are usual.
    pub fn new(lot: LotSize) -> Log {
        Log { lot, level: Level::II, major: Aql::P25, minor: Aql::P4, looked_at: 0, findings: Vec::new() }
    }

    /// The plan for a class; none for what is critical, of which no piece may show any, however many are looked at.
    pub fn plan(&self, severity: Severity) -> Option<Plan> {
        match severity {
            Severity::Critical => None,
            Severity::Major => Some(plan(self.lot, self.level, self.major)),
            Severity::Minor => Some(plan(self.lot, self.level, self.minor)),
        }
    }

    /// Pieces to look at: the larger of the two samples, so that one sample serves all classes.
    pub fn sample(&self) -> u32 {
        let samples = [Severity::Major, Severity::Minor].into_iter().filter_map(|severity| self.plan(severity));
        samples.map(|plan| plan.sample).max().unwrap_or(0)
    }

    /// Pieces that show a defect of that class and none graver, among the first so many.
    fn bad(&self, severity: Severity, sample: u32) -> u32 {
        let within = self.findings.iter().filter(|finding| finding.piece <= sample);
        let mut pieces: Vec<(u32, Severity)> = within.map(|finding| (finding.piece, finding.severity)).collect();
        // Of each piece the gravest comes first.
        pieces.sort_by_key(|(piece, severity)| (*piece, std::cmp::Reverse(*severity)));
        pieces.dedup_by_key(|(piece, _)| *piece);
        pieces.iter().filter(|(_, worst)| *worst == severity).count() as u32
    }

    /// How the lot stands for each class, gravest first.
    ///
    /// # Formula
    /// A piece counts once, in the class of its gravest defect. Each class is judged on the pieces of its own sample, what is critical on all
    /// that are looked at.
    ///
    /// # Source
    /// ISO 2859-1 for the numbers; that a piece counts in its gravest class, and that nothing critical passes, is common practice.
    pub fn standings(&self) -> [Standing; 3] {
        Severity::ALL.map(|severity| {
            let (sample, accept) = self.plan(severity).map_or((self.sample(), 0), |plan| (plan.sample, plan.accept));
            // What is critical fails the lot wherever it was found.
            let bad = self.bad(severity, if severity == Severity::Critical { u32::MAX } else { sample });
            let stands = if bad > accept {
                Stands::Fails
            } else if self.looked_at >= sample {
                Stands::Passes
            } else {
                Stands::Open(sample - self.looked_at)
            };
            Standing { severity, sample, accept, bad, stands }
        })
    }

    /// How the lot stands: it fails where one class fails, and passes where all pass.
    pub fn stands(&self) -> Stands {
        let each = self.standings().map(|standing| standing.stands);
        if each.contains(&Stands::Fails) {
            return Stands::Fails;
        }
        let left = |stands: &Stands| match stands {
            Stands::Open(left) => *left,
            Stands::Passes | Stands::Fails => 0,
        };
        match each.iter().map(left).max().unwrap_or(0) {
            0 => Stands::Passes,
            left => Stands::Open(left),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn log() -> Log {
        Log::new(LotSize::new(400).expect("a lot"))
    }

    fn found(piece: u32, severity: Severity) -> Finding {
        Finding { piece, what: "open-seam".to_owned(), severity }
    }

    #[test]
    fn a_lot_is_open_until_all_pieces_of_the_larger_sample_were_looked_at() {
        let mut log = log();
        // Letter H: 50 pieces for both limits.
        assert_eq!((log.sample(), log.stands()), (50, Stands::Open(50)));
        log.looked_at = 49;
        assert_eq!(log.stands(), Stands::Open(1));
        log.looked_at = 50;
        assert_eq!(log.stands(), Stands::Passes);
    }

    #[test]
    fn four_majors_fail_at_3_and_it_may_be_said_before_the_end() {
        let mut log = log();
        log.looked_at = 20;
        log.findings = [2, 5, 9].map(|piece| found(piece, Severity::Major)).to_vec();
        assert_eq!(log.stands(), Stands::Open(30));
        log.findings.push(found(19, Severity::Major));
        assert_eq!(log.stands(), Stands::Fails);
    }

    #[test]
    fn a_piece_counts_once_in_its_gravest_class() {
        let mut log = log();
        log.looked_at = 50;
        log.findings =
            vec![found(1, Severity::Minor), found(1, Severity::Major), found(1, Severity::Major), found(2, Severity::Minor)];
        let [critical, major, minor] = log.standings();
        assert_eq!((critical.bad, major.bad, minor.bad), (0, 1, 1));
    }

    #[test]
    fn one_critical_piece_fails_the_lot_wherever_it_was_found() {
        let mut log = log();
        log.findings = vec![found(61, Severity::Critical)];
        assert_eq!(log.stands(), Stands::Fails);
    }
}
