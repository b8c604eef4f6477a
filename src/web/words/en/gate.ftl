# The page of the gate and the announcer.

gate-title = Gate
gate-looking = Looking at what the service has …
gate-days = Days of the show
gate-no-day = Without a time yet
gate-no-ring = No ring set
gate-no-classes = No class yet. They appear here as soon as the office has made the program.
gate-checked-in-count = { $here } of { $going } checked in
gate-to-day = All classes
gate-no-class = There is no such class any more. The office may have taken it out of the program.

# Where there is no gate.
gate-ways-on = Ways on
gate-no-store = This browser keeps nothing
gate-no-store-what = Is this a private window? Open the page in an ordinary one: the gate must not lose what it was told.
gate-not-paired = This device is not the gate's yet
gate-not-paired-what = The show office gives you a code for the gate. With it this phone or desk calls classes, checks entries in and reads the placings.
gate-other-phone = This phone is paired as a judge's
gate-other-phone-what = To work at the gate with it, let it go on its own page first and pair it with a code for the gate.
gate-waiting = Waiting for the first signal
gate-waiting-what = This device is paired and has not heard of the service yet. Move to where there is signal; it goes on by itself.
gate-ended = This device is no longer the gate's
gate-ended-what = The office took it off the show, or the session ended. Nobody's name is kept on it any more.
gate-left-unsent = These changes never reached the service. Tell the office, then put them away:
gate-to-pair = Type the code
gate-to-office = To the office
gate-to-judge = To the judge's page
gate-choose-show = Which show's gate?
gate-no-show = There is no show yet. The office makes one.

# Signal, and what waits to be sent.
gate-no-signal = No signal. What you see is kept on this device and may be old.
gate-no-signal-since = No signal since { $time }. What you see is from then.
gate-unsent = { $count ->
    [one] One change is not sent yet.
   *[other] { $count } changes are not sent yet.
  }
gate-unsent-what = They are kept here and go out in this order as soon as there is signal.
gate-not-sent = not sent yet
gate-refused = Not taken by the service: { $change }
gate-put-away = Put this away
gate-change-call = class { NUMBER($number, useGrouping: 0) } called
gate-change-order = class { NUMBER($number, useGrouping: 0) }, another order of go
gate-change-status = class { NUMBER($number, useGrouping: 0) }, { $backNumber } { $status }
gate-undo = Undo
gate-undone = { $backNumber } is as before.
gate-undone-order = The order is as before.
gate-said-status = { $backNumber }: { $status }
gate-said-order = The order of go is changed.
gate-said-called = Class { NUMBER($number, useGrouping: 0) } is called.

# A class.
gate-call = Call the class to the ring
gate-call-again = Call again
gate-announce = Read the placings
gate-sheet = Gate sheet
gate-not-drawn = The order of go is not drawn yet; these stand by back number.
gate-no-entries = Nobody is entered in this class.
gate-rail = All { $going } go in together.
gate-late = late add
gate-here = here
gate-check-in-number = { $backNumber } is here
gate-more = More for { $backNumber }
gate-moved = It was moved to another class.
gate-at-the-gate = At the gate
gate-in-ring = In the ring
gate-on-deck = On deck
gate-in-the-hole = In the hole
gate-gone = gone
gate-nobody = –
gate-all-gone = All have gone.
gate-not-here-yet = not checked in
gate-gone-count = { $gone } of { $going } have gone, as far as the judges' phones and this gate know.
gate-next = Next one in
gate-one-back = One back

# An entry.
gate-entry = Number { $backNumber }
gate-do-checked-in = Here after all: check in
gate-do-scratched = Scratch
gate-do-no-show = Did not come
gate-do-excused = Excused
gate-do-not-here = Not here yet: take the check-in back
gate-do-take-back = Take it back: goes after all
gate-why = Why { $status }? The office reads it.
gate-own-reason = Or in your own words
gate-write-reason = Keep this reason
gate-reason-by-exhibitor = The exhibitor does not want to go
gate-reason-horse-unfit = The horse is not fit to go
gate-reason-exhibitor-unfit = The exhibitor is not fit to go
gate-reason-not-at-gate = Not at the gate when it was called
gate-reason-called-three-times = Called three times, nobody came
gate-reason-by-judge = Excused by the judge
gate-reason-equipment = Equipment, as the steward decided
gate-reason-lameness = Lameness, as the judge decided
gate-reason-mistake = Written down by mistake
gate-reason-came-after-all = Came after all
gate-reason-undone = Undone at the gate: it was a mistake

# The order of go.
gate-change-the-order = Change the order of go
gate-to-sheet = Gate sheet
gate-earlier = { $backNumber } one earlier
gate-later = { $backNumber } one later
gate-last = { $backNumber } to the end
gate-keep-order = Keep this order
gate-order-as-it-was = As it was
gate-why-order = Why another order?
gate-order-is-read = The reason is public, together with the order.
gate-reason-two-goes = One rider with two horses, too close together
gate-reason-not-ready = Not ready yet
gate-reason-tack = Tack is being put right
gate-reason-other-ring = Still in the other ring

# Reading the placings.
gate-not-posted = Nothing is posted yet. The placings appear here as soon as the office posts the result.
gate-nobody-placed = Nobody is placed in this class.
gate-posting-provisional = Provisional.
gate-posting-official = Official.
gate-posting-corrected = Official, corrected.
gate-posting = Posting { $version } of { $when }
gate-newer-posting = A newer result is posted. Stop here: the placings are being read again from the service.
gate-announcement-kept = No signal: this was read at { $time }. Ask the office whether it still stands before you read it out.
gate-judged-by = { $count ->
    [one] Judge: { $names }
   *[other] Judges: { $names }
  }
gate-placings-of = Placings of judge { $judge }
gate-places-count = { $count ->
    [one] One place
   *[other] { $count } places, from the last to the first
  }
gate-say-provisional = Say that the result is provisional.
gate-place = Place { $place }
gate-tied = shares the place
gate-back-number = Back number
gate-number-only = By back number only
gate-riding = on { $horse }
gate-spoken = Spoken:
gate-total = Total { $total }
gate-page = { $at } of { $of }
gate-read-next = Next
gate-reading-keys = Keys: → next, ← back, Home from the beginning.

# This device.
gate-this-phone = This phone
gate-this-office = This desk
gate-let-go-phone-what = When the day is done, give the phone back to its owner with nothing of the show on it.
gate-let-go-office-what = Leave the gate when you leave the desk; nothing of it stays in this browser.
gate-let-go-phone = Let this phone go
gate-let-go-office = Leave the gate
gate-let-go-phone-sure = It is the gate's no more, and needs a new code to be so again. That cannot be undone.
gate-let-go-office-sure = What was kept in this browser is thrown away.
gate-let-go-judge-unsent = This phone also holds cards of a judge that are not sent. Send or save them first.
gate-let-go-unsent = { $count ->
    [one] One change was not taken by the service yet, and would be lost.
   *[other] { $count } changes were not taken by the service yet, and would be lost.
  }
