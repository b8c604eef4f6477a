# The office: exhibitors, horses and entries; the entries of a class and its order of go.
office-entries-title = Entries
office-entries-late = Late entry
office-entries-find = Back number or name
office-entries-find-hint = Digits find a number, letters an exhibitor, a horse or an owner. Enter opens the first one.
office-entries-count = { $found } of { $all }.
office-entries-free = { $count ->
    [0] Next free number: { $next }.
   *[other] Next free number: { $next }; free in between: { $between }.
  }
office-entries-none = Nobody is entered yet. Begin with a late entry: exhibitor, horse, back number and classes in one form.
office-entries-not-found = Nobody fits "{ $words }". Try fewer letters, or make a late entry.
office-entries-number = Back number
office-entries-exhibitor = Exhibitor
office-entries-horse = Horse
office-entries-entry = No. { $number }
office-entries-owner = owner { $name }
office-entries-erased-name = Name erased
office-entries-keep = Keep
office-entries-change = Change
office-entries-why = Why
office-entries-why-hint = In words that others will read. Write no names.

office-entries-classes = Classes
office-entries-class = { $number } { $name }
office-entries-no-class = In no class yet. Enter it in one below.
office-entries-go = go { $position }
office-entries-place = place { $place }
office-entries-enter = Enter
office-entries-enter-another = Enter in another class
office-entries-choose = Choose a class
office-entries-entered = { $count ->
    [0] No. { $number } is entered, in no class yet.
    [one] No. { $number } is entered in class { $classes }.
   *[other] No. { $number } is entered in classes { $classes }.
  }
office-entries-why-late = Why so late
office-entries-why-late-hint = Needed once the order of go is drawn. A late add goes last. Write no names.
office-entries-no-open-class = No class takes entries any more: in all of them a card is signed.

office-entries-change-number = Back number
office-entries-new-number = New back number
office-entries-next-free = Next free number: { $number }. A number stays once a card with it is signed.
office-entries-taken = { $number } is { $exhibitor } with { $horse }. Choose another one.
office-entries-number-changed = { $before } wears { $number } now.

office-entries-spoken = How the names are spoken
office-entries-spoken-exhibitor = { $name }, as it is spoken
office-entries-spoken-horse = { $name }, as it is spoken
office-entries-spoken-hint = For the announcer, word for word: "Ah-NOOK Oh-DUNN-ell". Where only the first name is public she sees the first word.
office-entries-spoken-kept = Kept. The announcer sees it at once.

office-entries-consents = Age, and the word of the family
office-entries-consents-line = Age and consents of a family are private. Whoever opens them leaves a line in the ledger of the show: who, when, whose.
office-entries-consents-open = Open them; this leaves a line
office-entries-consents-close = Close them
office-entries-born = Born { $day }
office-entries-born-unknown = Date of birth not known. In a youth class such a rider is taken for a minor.
office-entries-no-consent = Nothing is recorded. A minor is then shown as the show has minors shown, an adult by full name.
office-entries-consent-holds = Holds:
office-entries-consent-by = by the { $who }, { $day }, { $how }
office-entries-name-full = full name
office-entries-name-first-name-and-initial = first name and initial
office-entries-name-back-number = back number only
office-entries-giver-parent = parent
office-entries-giver-guardian = guardian
office-entries-giver-exhibitor = exhibitor herself
office-entries-how-signed-form = signed form
office-entries-how-e-mail = e-mail
office-entries-how-in-person = in person
office-entries-consent-new = Record a word of the family
office-entries-consent-name = Her name may be public as
office-entries-consent-name-hint = To take an earlier word back, record "back number only".
office-entries-consent-giver = Whose word it is
office-entries-consent-day = Given on
office-entries-consent-how = How
office-entries-consent-record = Record it
office-entries-consent-recorded = Recorded. It holds at once, in what was posted before too.

office-entries-erase = Erase the name
office-entries-erase-what = If a family asks for it. Places, cards and postings stay, under the back number.
office-entries-erase-begin = Erase the name …
office-entries-erase-title = Erase this name for good?
office-entries-erase-goes = Gone for good: the name, how it is spoken, the date of birth, the consents, the videos, the words of the family's questions.
office-entries-erase-stays = It stays: back number, places, cards and postings, which never held the name.
office-entries-erase-never = Nothing brings the name back. Whoever shows again is a new exhibitor. Words that people wrote themselves are not searched and changed.
office-entries-erase-why = Why
office-entries-erase-asked-by-family = The family asked for it
office-entries-erase-asked-by-exhibitor = The exhibitor asked for it
office-entries-erase-authority = An authority asked for it
office-entries-erase-entered-in-error = Entered in error
office-entries-erase-owner = Also the owner's name, { $name }
office-entries-erase-repeat = Type the back number { $number } once more
office-entries-erase-yes = Erase for good
office-entries-erase-done = { $queries ->
    [0] The name is erased. Consents removed: { $consents }.
   *[other] The name is erased. Consents removed: { $consents }. Questions whose words are gone: { $queries }.
  }
office-entries-erase-still = { $count ->
    [one] In one record somebody wrote a word of the name into a reason or remark. Look at it; it was left as it is.
   *[other] In { $count } records somebody wrote a word of the name into a reason or remark. Look at them; they were left as they are.
  }

office-entries-late-what = Whoever is at the show already is found by name, so that nobody and no horse is there under two spellings.
office-entries-just = Entered just now
office-entries-in-no-class = entered, in no class yet
office-entries-in-classes = entered in { $classes }
office-entries-late-send = Enter
office-entries-is-known = At the show already.
office-entries-new-exhibitor = Entered anew, unless you choose one of those who are there.
office-entries-new-horse = Entered anew, unless you choose one of the horses that are there.
office-entries-born-on = Date of birth
office-entries-born-on-hint = Only the office sees it. Under 18 the name is public only as the family says.
office-entries-goes-on = What was done so far stays. Put right what is named above and send again: it goes on from there, and nothing is entered twice.

office-entries-of-class = Entries of class { $number }
office-entries-order = Order of go
office-entries-class-empty = Nobody is entered in this class yet. Enter a back number below.
office-entries-go-head = Go
office-entries-who = Exhibitor and horse
office-entries-has-video = with video
office-entries-added-late = added late
office-entries-change-entry = Change No. { $number }
office-entries-becomes = No. { $number }
office-entries-to-entered = takes part again
office-entries-to-checked-in = is checked in at the gate
office-entries-to-scratched = is scratched
office-entries-to-no-show = did not come
office-entries-to-excused = is excused
office-entries-now = No. { $number }: { $status }.
office-entries-undo = Take it back
office-entries-undo-reason = Taken back at once at the desk.
office-entries-video = Video of the go
office-entries-video-hint = An address that begins with https://. Office and judges of the class see it, nobody else. Empty takes it off.
office-entries-keep-video = Keep the address
office-entries-video-kept = The judges of the class see the video now.
office-entries-video-off = The video is taken off.
office-entries-add = Add an entry
office-entries-add-hint = Of somebody who has a number at this show.
office-entries-nobody = Nobody wears { $number }. Make a late entry.
office-entries-is = { $exhibitor } with { $horse }
office-entries-there = It is in the class already: { $status }.

office-entries-draw = Draw
office-entries-nobody-goes = Nobody goes in this class, so there is nothing to draw.
office-entries-draw-first = Draw the order of go
office-entries-draw-again = Draw again
office-entries-seed = It is drawn from the seed { $seed }, which was stored when the class was made. Nobody can draw until it pleases: a second draw is on record, with its reason.
office-entries-gap = Goes between two goes of one rider
office-entries-gap-hint = Empty: as many as the field allows.
office-entries-why-draw = Why it is drawn again
office-entries-why-draw-hint = Everybody can read it. Write no names.
office-entries-drawn = { $gap ->
    [0] { $count } goes are drawn.
   *[other] { $count } goes are drawn; between two of one rider are at least { $gap } goes.
  }
office-entries-not-drawn = The order of go is not drawn yet.
office-entries-how = { $count ->
    [one] How it came about: one entry on record
   *[other] How it came about: { $count } entries on record
  }
office-entries-kind-drawn = Drawn
office-entries-kind-redrawn = Drawn again
office-entries-kind-by-hand = Set by hand
office-entries-kind-late-add = Late add, goes last
office-entries-seed-of = Seed { $seed }.
office-entries-repeat-same = This browser drew it again: the same order.
office-entries-repeat-differs = This browser drew it again and got another order. Tell whoever looks after the service.
office-entries-repeat-not-here = It cannot be drawn again from what stands here now: somebody has left the class or her number since.
office-entries-repeat-what = This line prints the numbers by their lots, the first first. Where a rider has several horses, one whose rider is not rested yet is passed over.

office-entries-by-hand = Set it by hand
office-entries-by-hand-what = The arrows move one entry; with the keyboard also the arrow keys, Home and End. With a mouse you can drag.
office-entries-sooner = No. { $number } goes sooner
office-entries-later = No. { $number } goes later
office-entries-moved-to = No. { $number } is go { $position } now.
office-entries-order-changes = { $count ->
    [0] Nothing is changed yet.
   *[other] { $count } entries go at another time than before.
  }
office-entries-set-order = Set this order
office-entries-as-it-was = As it was
office-entries-why-order = Why the order changes
office-entries-order-set = The order of go is set. The gate sees it at once.

office-entries-split-combine = Split and combine
office-entries-split = Split this class
office-entries-split-what = A new class gets sheet, pattern, rule and panel of this one, a seed of its own, and is drawn anew. Only before a card is signed.
office-entries-split-who = Who moves to the new class
office-entries-class-number = Number of the new class
office-entries-class-name = Name of the new class
office-entries-division = Division
office-entries-split-do = Split
office-entries-split-preview = { $moving ->
    [0] Choose who moves. { $staying } stay: { $rest }.
   *[other] { $moving } move to class { $number }: { $who }. { $staying } stay: { $rest }.
  }
office-entries-split-done = { $count } entries are in class { $number } now.
office-entries-combine = Combine other classes into this one
office-entries-combine-what = Their entries join class { $number }, which keeps its sheet, rule and panel. Those classes end by it, and nothing takes them apart again.
office-entries-combine-do = Combine for good
office-entries-combine-preview = { $both ->
    [0] { $joining } join class { $number }: { $who }.
   *[other] { $joining } join class { $number }: { $who }. In both already, so they go once: { $twice }.
  }
office-entries-combine-done = { $count } entries joined class { $number }.
