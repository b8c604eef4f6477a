# The judge's page: a phone at the ringside, or a desk before a video.

judge-close = Close

# The day.
judge-day = Classes
judge-phone-of-judge = Judge { $judge }
judge-phone-of-scribe = Scribe for judge { $judge }
judge-day-empty = No class yet. They appear here as soon as the office seats the panel.
judge-day-to-do = To do
judge-day-no-time = Without a time yet
judge-look-again = Look again
judge-referee = referee, asked only where the two judges differ
judge-nothing-here = This phone has no such class or entry; the office may have moved it.
judge-hint = Before your first go
judge-hint-signal = You need no signal. Each tap is kept on this phone before you see it, and sent when there is signal.
judge-hint-marks = Tap a mark and the next maneuver comes by itself. A tap on a maneuver above takes it in hand again.
judge-hint-undo = Undo takes back the last tap, as often as you like.
judge-hint-sign = Nothing is final until you sign. After that a card is changed only by an amendment with a reason.
judge-hint-read = Understood

# Where there is no day.
judge-loading = One moment
judge-loading-what = Looking at what this phone has.
judge-not-paired = This phone is not paired
judge-not-paired-what = The show office gives you a code for your seat. With it this phone becomes yours for the show.
judge-to-pair = Type the code
judge-paired-no-day = Waiting for your classes
judge-paired-no-day-what = This phone is paired, but there has been no signal since. Go where there is signal for a moment; then you need none.
judge-gate-phone = This phone is the gate's
judge-gate-phone-what = It calls entries and checks them in. To judge with it, let it go and pair it with a judge's code.
judge-to-gate = To the gate
judge-no-store = This browser keeps nothing
judge-no-store-what = Marks could be lost, so none can be written here. Is this a private window, or is the phone full? Open the page in an ordinary window, or make room.
judge-revoked = The office took this phone back.
judge-revoked-what = What is written stays on it, and nothing is sent. Ask the office for a new code, or hand over what is here as a file.
judge-revoked-look = To this phone

# This phone.
judge-this-phone = This phone
judge-export-what = All that this phone holds, as a file that the office can type in from.
judge-export = Save as a file
judge-let-go-what = Is the show over, or does somebody else take this phone? Let it go: key, cards and remarks are wiped from it.
judge-let-go = Let this phone go
judge-let-go-title = Let this phone go?
judge-let-go-sure = It can neither write nor sign any more. What the service has stays there.
judge-let-go-keep = Keep it
judge-let-go-unsent = { $unsent ->
    [one] One change is only on this phone.
   *[other] { $unsent } changes are only on this phone.
  }
judge-let-go-unsent-what = They would be lost. Go where there is signal first, or save them as a file.
judge-let-go-anyway = Let it go and lose them
judge-left-behind = Here is still what { $judge } did not send at { $show }. Give it to the office as a file before you throw it away.
judge-left-behind-away = Throw away

# Signal, clock, versions.
judge-signal-asking = Looking for signal …
judge-signal-none = { $unsent ->
    [0] No signal. Everything is on this phone; go on.
    [one] No signal. One change waits on this phone; go on.
   *[other] No signal. { $unsent } changes wait on this phone; go on.
  }
judge-signal-sending = { $unsent ->
    [one] Sending one change …
   *[other] Sending { $unsent } changes …
  }
judge-signal-heard = The service has everything, { $time }.
judge-clock-ahead = { $minutes ->
    [one] This phone's clock is a minute ahead. It does no harm: times go by the service's clock.
   *[other] This phone's clock is { $minutes } minutes ahead. It does no harm: times go by the service's clock.
  }
judge-clock-behind = { $minutes ->
    [one] This phone's clock is a minute behind. It does no harm: times go by the service's clock.
   *[other] This phone's clock is { $minutes } minutes behind. It does no harm: times go by the service's clock.
  }
judge-update = A newer version of this page is here.
judge-update-take = Take it now
judge-update-later = Later
judge-notice-conflicts = { $count ->
    [one] One go was written differently on two phones.
   *[other] { $count } goes were written differently on two phones.
  }
judge-notice-conflicts-look = Look and choose

# Where a card is.
judge-card = Your card
judge-card-blank = Nothing is written yet.
judge-card-only-on-this-phone = { $unsent ->
    [one] Only on this phone: one change.
   *[other] Only on this phone: { $unsent } changes.
  }
judge-card-on-its-way = { $unsent ->
    [one] On its way: one change.
   *[other] On its way: { $unsent } changes.
  }
judge-card-at-the-service = At the service. Not signed.
judge-card-refused = Refused: { $why }.
judge-card-conflict = { $count ->
    [one] Written differently on two phones: one go.
   *[other] Written differently on two phones: { $count } goes.
  }
judge-card-signed-on-this-phone = Signed on this phone at { $time }. It is sent when there is signal.
judge-card-signed-held = Signed on this phone at { $time }. It is held back until you have chosen between the two versions.
judge-card-signed-and-received = { $revision ->
    [1] Signed and received at { $time }.
   *[other] Signed and received at { $time }, amended (revision { $revision }).
  }
judge-card-signature-refused = The signature was refused: { $why }.
judge-refusal-read = Put it away

# Where one go is.
judge-written-blank = nothing written
judge-written-only-on-this-phone = only on this phone
judge-written-on-its-way = on its way
judge-written-at-the-service = at the service
judge-written-conflict = two versions
judge-written-refused = refused: { $why }
judge-written-signed = signed

# What could not be written.
judge-not-written-signed = This card is signed. To change it, amend it with a reason.
judge-not-written-not-going = This entry does not go any more.
judge-not-written-unknown-class = This class is not on this phone any more.
judge-not-written-withdrawn = You left the panel of this class; its card is closed.
judge-not-written-no-conflict = This was settled meanwhile.
judge-not-written-nothing-to-undo = There is nothing to take back.
judge-not-written-not-kept = The phone did not keep it, so nothing changed. Is it full? Make room and tap again.

# A class.
judge-class-short = Class { $number }
judge-pattern = Pattern: { $name }
judge-rule = How it is placed
judge-rule-ties-must = Break the ties on your card before you sign it.
judge-rule-ties-may = Ties on your card may stand; you can break them.
judge-you = you
judge-gate-sheet = Order of go
judge-gate-empty = Nobody is entered yet. Entries appear here as soon as the office has them.
judge-gate-next = next
judge-gate-done = done
judge-gate-under-way = { $marked } of { $of }
judge-next-go = Next: { $number }
judge-to-compare = Compare
judge-to-sign = Sign
judge-to-signed = Signed card
judge-to-places = Place the class
judge-change-added = { $number } was added.
judge-change-gone = { $number } was taken out of this class.
judge-change-status = { $number }: { $status }.
judge-change-order = The order of go has changed.
judge-change-read = Seen

# A go.
judge-back-number = Back number
judge-go-title = Go of { $number }
judge-go-place = { $position } of { $of }
judge-goes = Other goes
judge-go-before = The go before: { $number }
judge-go-after = The go after: { $number }
judge-in-hand = In hand
judge-step-back = The maneuver before
judge-step-on = The maneuver after
judge-step-mark = Mark
judge-step-measure = Time
judge-sign-mark = M
judge-sign-measure = T
judge-sign-extra = { $count ->
    [1] F
   *[other] F{ $number }
  }
judge-sign-not-seen = ns
judge-all-marked = All marked
judge-staff = The go, maneuver by maneuver
judge-staff-penalties = penalties
judge-not-marked = not marked
judge-not-seen = Not seen
judge-marks = Marks
judge-marks-on = Go on marking
judge-tens = From { $from }
judge-tens-back = Back
judge-typed-maneuver = Mark
judge-typed-extra = Mark
judge-typed-mark = Mark
judge-typed-measure = Time in seconds
judge-typed-take = Write it
judge-typed-wrong = Write a number from { $low } to { $high }.
judge-percent = { $figure } %
judge-seconds = { $figure } s
judge-undo = Undo
judge-unmark = Unmark
judge-remark = Remark
judge-ruling = Ruling
judge-line = Line
judge-amending = You are amending a signed card. It counts as it was until you sign the amendment.
judge-to-amend = Look or amend
judge-shut-withdrawn = You left the panel of this class. Your card is closed.
judge-needs-ruling = A maneuver was not seen and counts as not shown. Say what that means for the pattern.

judge-gait-walk = walk
judge-gait-jog = jog
judge-gait-trot = trot
judge-gait-extended-trot = extended trot
judge-gait-lope = lope
judge-gait-canter = canter
judge-gait-gallop = gallop
judge-gait-back = back
judge-gait-halt = halt
judge-gait-turn = turn
judge-hand-left = left
judge-hand-right = right
judge-way = { $from } to { $to }
judge-way-at = at { $cone }
judge-coefficient = counts { $coefficient } times

# The total and its parts.
judge-total-line = Total so far
judge-part-base = base
judge-part-maneuvers = marks
judge-part-form = form
judge-part-penalties = penalties
judge-part-ruling = ruling
judge-part-movements = marks
judge-part-collectives = collective
judge-part-errors = errors
judge-part-maximum = out of
judge-part-mark = mark
judge-part-time = time
judge-part-total = total
judge-total-said = Total { $total }
judge-total-barred = none: ruled out
judge-total-none = none yet

# Penalties.
judge-penalties-at = Penalty against { $position }
judge-penalties-of-go = Penalty against the whole go
judge-penalty-said = { $count ->
    [0] { $label }, takes { $points }
    [one] { $label }, takes { $points }, taken once
   *[other] { $label }, takes { $points }, taken { $count } times
  }
judge-pardon = { $count ->
    [one] Take off: { $label }, { $points }
   *[other] Take off one of { $count }: { $label }, { $points }
  }
judge-errors = Errors of course: { $count }
judge-errors-next = The next one takes { $points }.
judge-errors-next-eliminates = The next one eliminates.
judge-errors-more = One more error
judge-errors-less = One less

# Rulings.
judge-rulings = Ruling for { $number }
judge-rulings-caution = You rule; this page only writes it down. What it does stands beside it.
judge-ruling-remark = Why (if you want to say it)
judge-ruling-back = Take the ruling back
judge-effect-takes-points-off = takes { $points } off
judge-effect-placed-below = placed below all who kept the pattern
judge-effect-not-placed = may not be placed
judge-effect-score-stands = the score stands, and it is shown

# Remarks and the video.
judge-remarks = Remarks on { $number }
judge-remark-which = Maneuver
judge-remark-at = On maneuver { $position }
judge-remark-of-go = On the whole go
judge-stamp = Put in { $time }
judge-video = Video
judge-video-open = Open the video
judge-watch = Watch
judge-watch-start = Start the watch
judge-watch-stop = Stop the watch
judge-watch-wrong = Write a time like 1:23.

# Shorthand.
judge-shorthand = Shorthand
judge-shorthand-example = +1/2, +1, −2 p5a, 0, ns, f4
judge-shorthand-take = Write it
judge-shorthand-not-understood = Not understood: { $written }. Nothing was changed.
judge-shorthand-not-on-scale = { $written }: the marks here go from { $low } to { $high }. Nothing was changed.
judge-shorthand-no-maneuver-left = { $written }: there is no maneuver left for it. Nothing was changed.
judge-shorthand-not-seen-here = { $written }: only a maneuver can be not seen. Nothing was changed.
judge-shorthand-no-form = { $written }: this sheet has no such mark. Nothing was changed.
judge-shorthand-penalty-unknown = { $written }: this sheet has no such penalty. Nothing was changed.
judge-shorthand-which-penalty = { $written } could be several. Which one?
judge-shorthand-nothing = Nothing stands in the line.

# The keyboard.
judge-keys = Keys
judge-keys-key = Key
judge-keys-does = What it does
judge-keys-line = a mark, in the line of shorthand
judge-keys-penalty = a penalty, in the line: p5, p3a
judge-keys-form = form and effectiveness, in the line: f4
judge-keys-enter = writes the line; without one, the next go
judge-keys-not-seen = not seen
judge-keys-turn = the maneuver before, after
judge-keys-goes = the go before, after
judge-keys-undo = undo
judge-keys-unmark = take the mark off
judge-keys-remark = remark
judge-keys-ruling = ruling
judge-keys-watch = start or stop the watch
judge-keys-escape = empties the line, puts a sheet away
judge-keys-keys = these keys

# All goes side by side.
judge-compare = All goes
judge-compare-empty = No go is whole yet. Mark one, and it stands here.
judge-compare-place = Place
judge-compare-entry = Number
judge-compare-unplaced = –
judge-compare-open = Still to do
judge-tie-open = Tied: { $numbers }
judge-tie-broken = Tied, ordered by you: { $numbers }
judge-tie-up = { $number } up
judge-tie-down = { $number } down
judge-tie-as-is = Let it stand in this order
judge-tie-flagged = It may stay; the office sees it.

# Rail classes.
judge-places = Places
judge-places-how = Tap the numbers in the order of their places. The sheet asks for the first { $first }.
judge-places-empty = Nobody is placed yet.
judge-places-left = Not placed yet
judge-places-type = Or type a number
judge-places-place = Place it
judge-places-unknown = { $number } does not go in this class.
judge-places-twice = { $number } is placed already.
judge-places-line = { $shared ->
    [yes] { $number } shares place { $place }
   *[no] { $number } in place { $place }
  }
judge-places-up = Up
judge-places-down = Down
judge-places-level = Level with the one above
judge-places-out = Take out
judge-places-ruling = Ruling, remark

# The signature.
judge-sign-title = Sign your card
judge-signed-card = Your signed card
judge-missing = Still missing
judge-nothing-missing = Nothing is missing.
judge-summary = { $count ->
    [one] Your card: one entry
   *[other] Your card: { $count } entries
  }
judge-sign = Sign this card
judge-sign-not-yet = It cannot be signed yet
judge-sign-caution = Your signature is made on this phone, also with no signal. What you signed is never changed, only amended by you.
judge-sign-again = Put away what was refused, look at the card, and sign it again.
judge-scribe-signs-not = { $judge } signs, on the judge's own phone. All that you write here is there too as soon as there is signal.
judge-scribe-amends-not = { $judge } amends, on the judge's own phone.
judge-not-signed-not-signable = Something is still missing; it stands above.
judge-not-signed-scribe-phone = The judge signs, on the judge's own phone.
judge-not-signed-unknown-class = This class is not on this phone any more.
judge-not-signed-withdrawn = You left the panel of this class.
judge-not-signed-revoked = The office took this phone back; it signs no more.
judge-not-signed-already-signed = This card is signed already.
judge-not-signed-not-signed = This card is not signed yet.
judge-not-signed-reason-missing = Write why you amend it; everyone can read the reason.
judge-not-signed-changes-nothing = Nothing is different from what you signed.
judge-not-signed-not-kept = The phone did not keep the signature. Is it full? Make room and sign again.
judge-amended-because = Amended: { $reason }
judge-amend-what = What you signed stays readable. An amendment with its reason follows it, and the office hears of it.
judge-amend-begin = Amend this card
judge-amend-reason = Why do you amend it?
judge-amend-sign = Sign the amendment
judge-amend-drop = Throw the amendment away

# Two versions of one go.
judge-differences = Two versions
judge-differences-none = There is nothing to choose. Both phones have the same.
judge-differences-what = Two phones wrote about the same go. Nothing is lost; you choose what counts.
judge-difference-go = { $number }, class { $class }
judge-difference-order = Order of class { $class }
judge-difference-when = The other version was saved at { $time }.
judge-difference-part = What
judge-difference-mine = This phone
judge-difference-theirs = The other
judge-difference-none = nothing
judge-difference-penalties = Penalties of the go
judge-difference-errors = Errors of course
judge-difference-ruling = Ruling
judge-difference-remark = Remark
judge-difference-together = Take both together
judge-difference-take-mine = Take all of this phone
judge-difference-take-theirs = Take all of the other
judge-difference-take-picked = Take what I picked
judge-difference-signed = The other version is signed already. To put yours on the card, take the other one here and then amend it.

# Her own scale, for her own eyes.
judge-tendency = For your own eyes
judge-tendency-mean = The mean of your { $goes } scores is { $mean }.
judge-tendency-rose = They rose by about { $by } points over every ten goes; the better goes may simply have come late.
judge-tendency-fell = They fell by about { $by } points over every ten goes; the better goes may simply have come early.
judge-tendency-level = They neither rose nor fell over the order of go.
judge-tendency-own = Worked out on this phone from your own card. Drift is no fault by itself.
