# The board: shows, classes and what is posted, as everyone reads it.

board-shows-title = Shows
board-shows-description = Classes, results and the reasons for each placing, as the show office posts them.
board-shows-empty = There is no show here yet. It appears as soon as the show office sets one up.
board-shows-present = On now
board-shows-coming = To come
board-shows-past = Past
board-shows-practice = For practice

board-title = { $show }: board
board-description = { $show }, { $place }. { $now ->
    [0] No class is in the ring.
    [one] One class is in the ring.
   *[other] { $now } classes are in the ring.
  } { $posted ->
    [0] Nothing is posted yet.
    [one] One result is posted.
   *[other] { $posted } results are posted.
  }
board-empty = The program has no classes yet. They appear as soon as the show office sets them up.
board-now = Now
board-now-empty = No class is in the ring.
board-next = Next
board-next-empty = Nothing more is on the program.
board-posted = Posted
board-posted-empty = Nothing is posted yet. A result appears here as soon as the show office posts it.
board-over = Not held
board-no-ring = Ring not set yet
board-class-number = Class { $number }
board-cards-in = { $in } of { $expected ->
    [one] one card is in
   *[other] { $expected } cards are in
  }
board-posted-at = posted { $time }
board-new = new
board-new-count = { $count ->
    [one] One result is new to you.
   *[other] { $count } results are new to you.
  }
board-new-seen = I have seen them
board-news = Class { $number }, { $name }: { $state ->
    [corrected] a correction has been posted.
   *[other] the result has been posted.
  }
board-find = Back number, or a name
board-find-send = Find
board-to-screen = The board for a big screen

# One class.
board-class-title = Class { $number }, { $name }: { $show }
board-class-description = { $show }: { $state }.
board-class-description-posted = { $show }: { $state }, { $time }. { $placed ->
    [one] One entry is placed
   *[other] { $placed } entries are placed
  }, each with the reason why.
board-class-cancelled = The class is not held.
board-class-combined = The class was put together with another one and is judged there.
board-order = Order of go
board-entries = Entries
board-order-empty = No entries yet.
board-order-not-drawn = The order of go is not drawn yet; these stand by back number.
board-go = Go
board-back-number = No.
board-who = Exhibitor and horse
board-name-not-public = Name not public
board-pattern = Pattern: { $name }

board-posted-line = { $version ->
    [1] Posted { $time }.
   *[other] Posted { $time }, version { $version }.
  }
board-changed-because = Changed because: { $reason }
board-places = Places
board-places-of-judge = Places of { $judge }
board-nobody-placed = Nobody is placed.
board-place = Place
board-tied = shared
board-total = Total
board-place-on-card = place { $place }
board-unplaced = Without a place
board-why-not = Why
board-did-not-go = Did not go
board-rule = How the class is placed

board-cards = The judges’ cards
board-cards-are-out = As each judge signed it. The number at the head of a column is that of the maneuver.
board-cards-never = The show does not publish the cards of this class.
board-cards-with-posting = The show publishes the cards of this class with the result.
board-cards-when-official = The cards of this class are published when the result is official.
board-card-of = Card of { $judge }
board-card-revision = amended, revision { $revision }
board-coefficient = (times { $coefficient })
board-not-seen = not seen
board-penalty = penalty
board-taken-off = Off
board-score-pattern = Score
board-score-one-mark = Mark
board-score-places = Score
board-score-percentage = Percent
board-score-measured = Seconds
board-fault = { $label }: −{ $points }
board-fault-at = Maneuver { $position }, { $label }: −{ $points }
board-remark = Judge’s remark: { $remark }
board-remark-at = Maneuver { $position }: { $remark }
board-errors-of-course = Errors of course: −{ $points }
board-lower-limit = The parts add up to { $points }; the lowest score of the sheet counts instead.
board-ruling-off-pattern = Off pattern
board-ruling-disqualified = Disqualified
board-ruling-excused = Excused
board-ruling-eliminated = Eliminated
board-ruling-no-score = No score
board-ruling-no-show = Did not come
board-ruling-scratched = Scratched
board-ruling-retired = Retired

board-postings = Every posting of this class
board-version = Version { $version }:
board-posting-shown = This is the one on this page.
board-posting-read = Read version { $version }
board-older = Version { $version }, replaced since
board-older-note = This was posted { $time } ({ $state }). What holds now is version { $now }.
board-place-now = Now

board-check = For whoever checks
board-check-why = Nothing that was recorded before this posting can be changed unseen as long as somebody keeps the head of the ledger that is printed here.
board-head = Head of the ledger, line { $sequence }
board-body-hash = Hash of the posting
board-signed-posting = The posting as the service signed it
board-keys = The service’s keys
board-csv = The result as a table (CSV)
board-printed = { $show }, class { $number }, version { $version } ({ $state }), posted { $time }

# The board for a screen at the ring.
board-screen-title = { $show }: board for a screen
board-screen-part = sheet { $part } of { $parts }
board-screen-still = In this browser the sheets do not take turns by themselves: all of them stand here, one under the other. Load the page again to see what is new.
board-screen-progress = Until the next sheet
board-screen-sheet = { $at } / { $count }
board-screen-as-of = as of { $time }
board-screen-previous = Previous sheet
board-screen-next = Next sheet
board-screen-pause = Pause
board-screen-go-on = Go on
board-screen-fill = Fill the screen
board-screen-back = To the board
