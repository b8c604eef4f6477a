# The office: the class in hand.
office-class-title = Class { $number }: { $name }
office-class-nav = Class { $number }
office-class-result = Cards and result
office-class-entries = Entries
office-class-panel = Panel
office-class-paper = Paper cards
office-class-closeness = How close it was
office-call = Call to the ring
office-call-again = Call again
office-called = The class is called. The board and the gate have heard it.
office-called-at = Called at { $time }
office-cancel-class = Cancel the class
office-cancel-class-ask = Cancel class { $number }?
office-cancel-class-why = The class does not take place, and everybody who looks at the board sees it at once. This cannot be undone.
office-cancelled = The class is cancelled.

# What comes next.
office-next-nobody-sits = Nobody sits on the panel yet: seat the judges.
office-next-over = This class does not take place.
office-next-not-begun = No card is begun yet.
office-next-called = Called to the ring; no card is begun yet.
office-next-cards-missing = { $in ->
    [0] Waiting for the cards: { $judges }.
   *[other] Still missing: { $judges }. In: { $in }.
  }
office-next-tie-open = { $count ->
    [one] All cards are in. One tie needs a ruling.
   *[other] All cards are in. { $count } ties need a ruling.
  }
office-next-ready = All cards are in, no tie is open: read the preview and post it.
office-next-changed = What was posted (version { $version }) is no longer what the cards say.
office-next-official = Posted, not yet official. Make it official when the time for questions is over.
office-next-posted = Posted and official. Nothing is to be done.

# Cards of the judges.
office-cards = Cards
office-cards-caption = Cards of class { $number }
office-judge = Judge
office-referee = referee
office-judge-seat = seat { $seat }
office-card = Card
office-phone = Phone
office-card-waiting = waiting
office-card-under-way = under way, { $written } of { $expected }
office-card-signed = signed, in since { $time }
office-card-signed-paper = from paper, in since { $time }
office-card-revision = (revision { $revision })
office-card-to-be-amended = { $count ->
    [one] to be amended: one entry came in since
   *[other] to be amended: { $count } entries came in since
  }
office-card-on-paper = { $count ->
    [0] on paper, nobody has typed it yet
    [one] on paper, typed by one, a second to come
   *[other] on paper, typed by two who differ
  }
office-card-withdrawn = left the panel, the card does not count
office-phone-none = no phone
office-phone-of-judge = hers since { $time }
office-phone-of-scribe = scribe's since { $time }
office-card-came-on-paper = It came on paper

# Chasing a card.
office-open-chase = Chase
office-open-phones = Phones
office-chase-where = { $judge } sits at: { $ring }.
office-chase-has-phone = Her phone is paired; marks that wait on it for a signal are not seen here.
office-chase-no-phone = No phone of hers is paired: pair one, or take the card on paper.
office-chase-say = What to say
office-say-waiting = Class { $number } ({ $name }): the office has nothing of your card yet. Have you judged it? Please look whether your phone has signal.
office-say-under-way = Class { $number } ({ $name }): the office sees { $written } of { $expected } goes on your card. Please finish it and sign.
office-say-sign = Class { $number } ({ $name }): your card is complete and not signed yet. Please sign it.
office-say-amend = { $count ->
    [one] Class { $number } ({ $name }): an entry came in after you signed. Please amend your card and sign it again.
   *[other] Class { $number } ({ $name }): { $count } entries came in after you signed. Please amend your card and sign it again.
  }
office-say-on-paper = Class { $number } ({ $name }): we are typing your card from the paper. Please be near, in case a figure cannot be read.
office-chase-note = Note: called
office-chase-noted = Called at { $time } (noted in this window only).
office-chase-strike = Strike the note

# Ties and rulings.
office-ties = Ties
office-tie-wait = It can be decided once every card is in.
office-tie-decide = Record the decision
office-own-tie = On { $judge }'s own card { $numbers } are level. That is hers to break: she amends her card.
office-rulings = Rulings
office-ruling-record = Record the ruling
office-ruling-kind = Decided by
office-ruling-run-off = run-off
office-ruling-re-work = re-work
office-ruling-judge = decision of a judge
office-ruling-coin = coin
office-ruling-share = the place is shared
office-ruling-declined = run-off declined
office-ruling-order = Order of those who were level
office-ruling-order-hint = The same rank twice means that they stay level.
office-ruling-rank = rank { $rank }
office-ruling-by = Who decided
office-ruling-by-hint = The call judge, the steward, show management; with the name.
office-ruling-why = Why
office-ruling-why-hint = Exhibitors will read it.
office-ruled = The ruling is recorded.
office-ruling-told = { $by } decided, recorded { $time }:
office-ruling-anew = Decide anew

# The preview.
office-preview = Preview
office-preview-caption = Preview of the result, judges side by side
office-preview-caption-judge = Preview of the result of { $judge }
office-preview-empty = There is nothing to merge yet: no card that counts is in.
office-preview-partial = This is of the cards that are in. Missing: { $judges }.
office-place = Place
office-number = Number
office-exhibitor = Exhibitor, horse
office-total = Total
office-why = Why
office-tied = level
office-did-not-go = Did not go:
office-rule = How this class is placed

# Posting.
office-post-head-first = Post
office-post-head-anew = Post anew
office-post-head-official = Make official
office-post-head-correction = Correct
office-post-first = Post this result
office-post-anew = Post this result anew
office-post-correction = Post the correction
office-post-official = Make it official
office-post-official-ask = Make this result official?
office-post-official-why = An official result stands. It can be corrected with a reason, and the old one stays readable; it cannot be taken back.
office-post-official-do = It is official
office-post-reason = Why it changes
office-post-reason-hint = Exhibitors will read it, e.g. "Judge Lund amended maneuver 4 of 148."
office-posted-said-first = The result is posted.
office-posted-said-anew = The result is posted anew.
office-posted-said-official = The result is official.
office-posted-said-correction = The correction is posted.
office-preview-changed = The preview changed while you were reading it.
office-preview-changed-moved = { $count ->
    [0] No place and no total moves by it.
    [one] It moves one entry.
   *[other] It moves { $count } entries.
  }
office-preview-seen = I have read it, go on with this

# What a change changes.
office-change-caption = { $before } and { $after }, side by side
office-change-posted = Posted (version { $version })
office-change-preview = Preview
office-change-as-read = As you read it
office-change-now = As it is now
office-change-total-before = Total before
office-change-total-after = Total after
office-change-same = the same
office-change-none = No place and no total changes.
office-change-moves = { $number }: { $was } before, { $willBe } now.
office-change-total = { $number } keeps the place; the total goes from { $was } to { $willBe }.
office-change-card = { $judge } amended her card: revision { $from } before, { $to } now.
office-change-card-new = The card of { $judge } came in.
office-change-rulings = { $count ->
    [one] One ruling was added.
   *[other] { $count } rulings were added.
  }
office-standing-placed = place { $place }
office-standing-tied = place { $place }, level
office-standing-unplaced = not placed
office-standing-absent = not in it

# What was posted.
office-postings = Posted
office-posted-nothing = Nothing is posted yet.
office-posted-line = Version { $version }, { $state }, { $time }.
office-posted-provisional = provisional
office-posted-official = official
office-posted-corrected = corrected
office-posted-ledger = After line { $line } of the ledger.
office-posted-heard = The board, the screens at the ring, the gate with the announcer, and whoever follows the show heard it at once.
office-posted-look = As everybody reads it

# The panel.
office-seats = Seats
office-seat = Seat
office-seat-order = Call and ties
office-seats-none = Nobody sits on the panel yet. Seat the judges below.
office-seat-call = call judge { $order }
office-seat-tie = tie judge { $order }
office-seat-leaves = Leaves the panel
office-seat-left = left { $time }
office-seat-leaves-ask = { $judge } leaves the panel?
office-seat-leaves-why = Her card counts no more, and she can write no more in this class. This cannot be undone.
office-seat-leaves-do = She leaves
office-seat-left-said = { $judge } has left the panel.
office-seat-replacement = Who takes her place
office-seat-nobody = nobody
office-seat-panel = Seat the panel
office-seat-role = As
office-seat-add = Another seat
office-seat-take-off = Take the seat off
office-seat-save = Seat this panel
office-seat-saved = The panel is seated.
office-person-name = Name of somebody who may judge
office-person-add = Add the person
office-person-added = { $name } is added.
