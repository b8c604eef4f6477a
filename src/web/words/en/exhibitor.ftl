# The pages of a family: finding an entry, and what it got, from whom, on which maneuver, and why.

# Finding.
exhibitor-find-title = Find an entry: { $show }
exhibitor-find = Find an entry
exhibitor-find-what = Back number, or the beginning of a name or of a horse
exhibitor-find-send = Find
exhibitor-find-how = A family decides how much of a name is public. Whoever goes by number alone is found by the back number alone.
exhibitor-found = { $count ->
    [one] One entry answers to “{ $words }”.
   *[other] { $count } entries answer to “{ $words }”.
  }
exhibitor-found-more = These are the first { $count } of several. Type more of the name, or the back number.
exhibitor-found-none = Nobody answers to “{ $words }”.
exhibitor-found-none-what = Look at the number on the back. Of a name type the beginning, as far as it is public: a child may be listed by number alone.
exhibitor-looking = Looking…
exhibitor-find-failed = The service does not answer. What you typed is still there: try again.
exhibitor-no-classes = In no class yet.

# An entry.
exhibitor-title = No. { $number }: { $show }
exhibitor-description = What number { $number } got at { $show }, class by class, with the reasons.
exhibitor-number = Back number { $number }
exhibitor-back-number = Back number
exhibitor-at-a-glance = At a glance
exhibitor-class = Class
exhibitor-where = Where it stands
exhibitor-entered-nowhere = This entry is in no class yet. Once it is entered its classes stand here.
exhibitor-find-another = Find another entry

# One class of the entry.
exhibitor-class-number = Class { $number }
exhibitor-goes = Goes { $position ->
    [1] first
    [2] second
    [3] third
   *[other] as number { $position }
  }
exhibitor-not-drawn = The order of go is not drawn yet
exhibitor-place-of = place { $place } of { $of }
exhibitor-place = Place
exhibitor-of = of { $of }
exhibitor-tied = shared
exhibitor-total = Total
exhibitor-without-place = without a place
exhibitor-by-judge = As { $judge } placed it
exhibitor-why = Why
exhibitor-rule = How the class is placed
exhibitor-class-page = The whole class { $number }
exhibitor-posted-at = Posted { $time }
exhibitor-nothing-posted = Nothing is posted yet. When it is, it shows here.
exhibitor-not-in-posting = The posted result does not hold this entry. If it went, ask the show office.

# Marks.
exhibitor-marks = Marks, judge by judge
exhibitor-maneuver = Maneuver
# As the sentences of the result call her.
exhibitor-judge-number = Judge { $number }
exhibitor-base = Base
exhibitor-times = (times { $coefficient })
exhibitor-whole-go = Against the whole go
exhibitor-errors-of-course = Errors of course
exhibitor-none = none
exhibitor-its-score-pattern = Score
exhibitor-its-score-one-mark = Mark
exhibitor-its-score-percentage = Percent
exhibitor-its-score-measured = Seconds
exhibitor-its-score-places = Score
exhibitor-place-on-card = Place on the card
exhibitor-left-off = left off
exhibitor-remark-of = { $judge }:
exhibitor-about-whole-go = About the whole go
exhibitor-stamps = A framed time is the moment in the video of this go, counted from its beginning.
exhibitor-stamp = At { $time } in the video:
exhibitor-counts = counts { $counts }
exhibitor-cards-never = The show does not publish the judges’ cards of this class. Ask at the show office who may see them.
exhibitor-cards-when-official = The judges’ cards of this class are published once the result is official.
exhibitor-cards-with-posting = No card of this entry is published.
exhibitor-amended = amended, revision { $revision }
exhibitor-takes = { $code }: −{ $points }

# The pattern.
exhibitor-pattern = Pattern: { $name }

# Corrections.
exhibitor-corrected = Changed { $time }. Why: { $reason }
exhibitor-history = What was posted, and when
exhibitor-version = Version { $version }, { $state }, { $time }
exhibitor-version-now = what holds now
exhibitor-moved-place = Place { $before } became { $now }.
exhibitor-moved-total = Total { $before } became { $now }.
exhibitor-got-place = It had a place before it was changed: { $before }. Now it has none.
exhibitor-gets-place = It had no place before; now it has place { $now }.

# This looks wrong.
exhibitor-wrong = This looks wrong
exhibitor-wrong-ask = Ask the show office
exhibitor-wrong-what = You can ask the show office about class { $number } from here. It reads what you write, looks at the cards, and answers. Nobody else sees that you asked.
exhibitor-wrong-caution = The judge’s decision stands. A protest is something else: it goes by the rules of the governing body to the steward or the show committee, often within a set time, and not from this page.
exhibitor-wrong-without-script = In this browser the form does not work without JavaScript. Ask at the show office, with the class and the back number.
exhibitor-wrong-about = What is it about?
exhibitor-about-place = The place or the total
exhibitor-about-marks = A mark or a penalty
exhibitor-about-who-rode = Who rode, or which horse
exhibitor-about-something-else = Something else
exhibitor-wrong-words = What looks wrong?
exhibitor-wrong-words-hint = The maneuver, the judge, what you saw. Leave out the names of other people’s children.
exhibitor-wrong-left = { $count ->
    [one] One character is left.
   *[other] { $count } characters are left.
  }
exhibitor-wrong-reached = How can the office reach you? (need not be filled in)
exhibitor-wrong-reached-hint = A stall, a telephone. Only the office sees it.
exhibitor-wrong-send = Send to the show office
exhibitor-wrong-sending = Sending…
exhibitor-wrong-choose = Say what it is about.
exhibitor-wrong-say = Say what looks wrong.
exhibitor-wrong-no-answer = The service does not answer.
exhibitor-wrong-no-answer-what = What you typed is still here. Send it again when there is signal: it counts once, however often you send it.
exhibitor-wrong-queries_waiting = Your questions about this are waiting for an answer already.
exhibitor-wrong-queries_waiting-what = Go to the show office, or ask again once it has answered. Nothing was sent.
exhibitor-wrong-too_many_requests = Many people are asking from here at once.
exhibitor-wrong-too_many_requests-what = What you typed is still here. Wait a minute, then send it again.
exhibitor-wrong-back_number_not_in_class = This number is not in the class any more.
exhibitor-wrong-back_number_not_in_class-what = Load the page again, and look at the number; what you typed stays.
exhibitor-wrong-other = The service did not take it.
exhibitor-wrong-other-what = What you typed is still here. Load the page again and send it once more, or go to the show office.

# What was asked.
exhibitor-asked = What you asked
exhibitor-asked-sent = Sent. The answer will stand here.
exhibitor-asked-at = Asked { $time }. { $about }.
exhibitor-asked-version = It is about version { $version } of the result.
exhibitor-asked-open = The office has it and has not answered yet.
exhibitor-asked-answered = Answered
exhibitor-asked-withdrawn = You took it back. Its words are gone.
exhibitor-asked-closed = The office closed it.
exhibitor-asked-erased = The words were erased.
exhibitor-asked-gone = This question is not there any more.
exhibitor-asked-not-read = It cannot be read now. The page tries again.
exhibitor-answer-at = The office, { $time }
exhibitor-outcome-stands = The result stands.
exhibitor-outcome-corrected = The result was corrected.
exhibitor-outcome-explained = It was explained; nothing was changed.
exhibitor-asked-new-answer = The office answered what you asked about class { $number }.
exhibitor-follow = Follow it elsewhere
exhibitor-follow-what = With this link you read the answer on another device. Whoever has it can read it too, so keep it to yourself.
exhibitor-follow-copy = Copy the link
exhibitor-follow-copied = Copied.
exhibitor-follow-by-hand = Copy it from the field by hand.
exhibitor-not-kept = This browser keeps nothing. Copy the link now, or you will not find the answer again.
exhibitor-withdraw = Take it back
exhibitor-withdraw-sure = Its words are gone at once, for the office too. That cannot be undone.
exhibitor-withdraw-yes = Yes, take it back
exhibitor-withdraw-failed = That did not work: the service does not answer, or the office has just answered. Nothing was changed.
exhibitor-forget = Forget it on this device
exhibitor-forget-sure = Without the link you will not find it again. The office keeps the question.
exhibitor-forget-yes = Yes, forget it here
exhibitor-ask-again = Ask something else
