# The office: a card that came on paper, typed by two people.
office-paper-title = Cards on paper, class { $number }
office-paper-what = A card that a judge wrote on paper is typed by two accounts. Neither sees what the other read until both are in.
office-paper-seats = The judges of the class and their cards
office-paper-no-panel = No judge sits on the panel of this class yet. Seat the panel first.
office-paper-judge = Judge
office-paper-card = Card
office-paper-paper = On paper
office-paper-seat = { $seat } { $name }
office-paper-not-signed = not signed
office-paper-signed-phone = signed on the phone, revision { $revision }
office-paper-signed-paper = in from paper, revision { $revision }
office-paper-take-up-of = Take up the paper of { $name }
office-paper-amend = Paper of { $name } changes her card
office-paper-amend-what = The card is signed. The paper becomes a new revision of it; the old one stays readable.
office-paper-why = Why it is on paper
office-paper-why-first = E.g. the phone fell into the water. It can stay empty. Write no names.
office-paper-why-amend = Why the signed card changes, in words that others will read. Write no names.
office-paper-begin = Begin typing
office-paper-brief-nobody = Taken up, nobody has typed it
office-paper-brief-mine-only = You have typed it; a second person is needed
office-paper-brief-other-only = Typed once; you can be the second
office-paper-brief-two-others = Typed by two others
office-paper-brief-differ = Both are in, and they differ
office-paper-brief-overtaken = Overtaken by a signature
office-paper-brief-accepted = Accepted as revision { $revision }
office-paper-brief-withdrawn = Withdrawn

office-paper-card-title = A card on paper, class { $number }
office-paper-of-class = Class { $number }, { $name }
office-paper-to-class = To the class
office-paper-state = Where the card stands
office-paper-reason = Why: { $reason }
office-paper-entered-mine = You, { $at }
office-paper-entered-other = Somebody else, { $at }
office-paper-stage-nobody = Nobody has typed it yet. Read the paper from top to bottom and type it whole.
office-paper-stage-mine-only = Yours is in. Now a second person signs in with an account of her own and types the same paper. You see nothing of it until it is in.
office-paper-stage-other-only = One person has typed it. You are the second: type what you read, without asking. You see hers when yours is in.
office-paper-stage-two-others = Two others have typed it. A third one is not taken.
office-paper-stage-differ = { $count ->
    [one] Both are in, and they differ in one field. Look at the paper again: whoever misread it mends her own.
   *[other] Both are in, and they differ in { $count } fields. Look at the paper again: whoever misread it mends her own.
  }
office-paper-stage-overtaken = The card was signed or amended since this paper was taken up. Compare the paper with the card as it is now, withdraw this one, and take it up again if they differ.
office-paper-stage-accepted = Both read the same. It is in as revision { $revision } of the card.
office-paper-stage-withdrawn = Withdrawn: { $why }
office-paper-sent-nobody = Kept.
office-paper-sent-mine-only = Yours is in. A second person is needed.
office-paper-sent-other-only = Kept.
office-paper-sent-two-others = Kept.
office-paper-sent-differ = Yours is in. The two differ; the fields stand above the form.
office-paper-sent-overtaken = Kept, but the card was signed meanwhile.
office-paper-sent-accepted = Both read the same. The card is in.
office-paper-sent-withdrawn = The paper card was withdrawn meanwhile.

office-paper-key = How to type fast
office-paper-key-enter = Enter goes to the next field, Shift and Enter back; arrow up and down to the same field of the go above or below.
office-paper-key-mark = 05 is 0.5 and -15 is −1.5 where the sheet marks by halves. A comma, ½ and 1/2 are understood too.
office-paper-key-not-seen = / is "not seen".
office-paper-key-penalty = *3 behind a mark is penalty 3 of this list; *3*3 twice.
office-paper-takes = −{ $points }
office-paper-seconds = +{ $points } s
office-paper-field-mark = Mark
office-paper-field-measure = Time (s)
office-paper-field-errors = Errors of course
office-paper-field-penalties = Penalties
office-paper-field-ruling = Ruling
office-paper-field-paper-total = Total on paper
office-paper-field-of = { $label }, back number { $number }
office-paper-no-ruling = none
office-paper-not-seen = not seen
office-paper-unread = Not understood: { $pieces }
office-paper-some-unread = Something that was typed is not understood; it is marked at its field.
office-paper-differs-here = The other who typed it has something else here.
office-paper-total = Total
office-paper-total-so-far = So far
office-paper-total-same = as on the paper
office-paper-total-differs = the marks come to { $total }
office-paper-placed-below = below all who kept the pattern
office-paper-not-placed = not placed
office-paper-more = { $count ->
    [0] No. { $number }: words of the judge, penalties by choice
   *[other] No. { $number }: words of the judge ({ $count }), penalties by choice
  }
office-paper-words-maneuver = Remark on { $position } { $name }
office-paper-words-ruling = Remark on the ruling
office-paper-words-go = Remark on the go
office-paper-penalty = Penalty
office-paper-penalty-at = Against
office-paper-whole-go = the whole go
office-paper-penalty-add = Put it in
office-paper-ranking = The first { $first }, by back number
office-paper-place = Place { $place }
office-paper-not-in-class = not in this class: { $numbers }
office-paper-twice = stands twice
office-paper-ties = Ties on this card
office-paper-ties-what = If the judge broke the tie on the paper, say who stands first, second …; if not, leave it empty.
office-paper-tie-place = No. { $number }
office-paper-maneuver-short = maneuver { $position }
office-paper-spoken-size = { $half ->
    [yes] { $whole ->
        [0] one half
       *[other] { $whole } and a half
      }
   *[no] { $whole }
  }
office-paper-spoken-mark = { $sign ->
    [minus] minus { office-paper-spoken-size }
    [plus] plus { office-paper-spoken-size }
   *[none] { office-paper-spoken-size }
  }

office-paper-whole = The card is whole. Look once more at the paper, then send it.
office-paper-missing = { $count ->
    [one] One thing is still open
   *[other] { $count } things are still open
  }
office-paper-more-missing = and { $count } more
office-paper-send = Send what I read
office-paper-send-mended = Send mine, mended
office-paper-stale = Your own entry was changed in another window since you opened it here. What you typed is still here.
office-paper-take-saved = Take what is kept instead

office-paper-differences = { $count ->
    [one] One field differs
   *[other] { $count } fields differ
  }
office-paper-number = No.
office-paper-where = Field
office-paper-mine = I read
office-paper-other = The other read
office-paper-nothing = nothing
office-paper-times = { $count } ×
office-paper-in-tie = { $place } in the tie
office-paper-maneuver = { $position } { $name }
office-paper-part-at = { $label }, at { $maneuver }
office-paper-part-remark-at = Remark on { $maneuver }
office-paper-part-errors-of-course = Errors of course
office-paper-part-mark = Mark
office-paper-part-measure = Time
office-paper-part-ruling = Ruling
office-paper-part-ruling-remark = Remark on the ruling
office-paper-part-remark = Remark on the go
office-paper-part-own-order = Order within a tie
office-paper-part-ranking = Ranking

office-paper-photo = Photo of the paper
office-paper-photo-view = The photo; it scrolls
office-paper-photo-alt = The judge's card on paper, as it was photographed
office-paper-photo-large = As large as it is
office-paper-photo-add = Add a photo of the paper
office-paper-photo-other = Put another photo in its place
office-paper-photo-hint = JPEG, PNG or WebP, at most 8 MB. Only the picture is kept, nothing of where and when it was taken.
office-paper-photo-sending = Sending …
office-paper-photo-stored = The photo is stored.

office-paper-withdraw = Withdraw this paper card
office-paper-withdraw-title = Withdraw this paper card?
office-paper-withdraw-what = What was typed counts no more and cannot be opened again. The paper can be taken up anew.
office-paper-withdraw-why = Why
office-paper-withdraw-yes = Withdraw it
office-paper-withdrawn = The paper card is withdrawn.
