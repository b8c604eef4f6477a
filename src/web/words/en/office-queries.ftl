# The office: what families ask about a result.
office-queries-title = Questions of the families
office-queries-what = An answer goes to the family that asked, and to nobody else. It changes no result: a correction is posted with the class.
office-queries-waiting = { $count ->
    [0] No question waits.
    [one] One question waits.
   *[other] { $count } questions wait.
  }
office-queries-open = Waiting ({ $count })
office-queries-closed = Done ({ $count })
office-queries-none-open = Nobody waits for an answer. A family asks from the page of its back number; the question then stands here at once.
office-queries-none-closed = Nothing was answered yet.

office-queries-class = Class { $number }, { $name }
office-queries-back-number = No. { $number }
office-queries-asked-at = asked { $at }
office-queries-about-place = About the place
office-queries-about-marks = About the marks
office-queries-about-who-rode = About who rode
office-queries-about-something-else = About something else
office-queries-state-open = waits for an answer
office-queries-state-answered = answered
office-queries-state-withdrawn = taken back by the family
office-queries-state-erased = words erased

office-queries-asked = What the family writes
office-queries-words-gone = The words are gone: taken back, or erased.
office-queries-posting = Asked about posting { $version }.
office-queries-overtaken = Asked about posting { $seen }; posting { $now } stands now.
office-queries-reached-by = To be reached: { $how }

office-queries-posted = What is posted
office-queries-not-posted = Nothing of this class is posted yet.
office-queries-whole-class = The question is about the class as a whole.
office-queries-not-in-posting = This back number is not in the posted result.
office-queries-posting-provisional = Posting { $version }, not yet official
office-queries-posting-official = Posting { $version }, official
office-queries-posting-corrected = Posting { $version }, corrected
office-queries-by-judge = On the card of { $name }:
office-queries-cards = What each judge gave

office-queries-answered = Answer
office-queries-answered-by = { $at }, by { $name }
office-queries-somebody = somebody of the office
office-queries-outcome = What came of it
office-queries-outcome-stands = The result stands.
office-queries-outcome-stands-what = It was looked at, and it is right.
office-queries-outcome-corrected = It was corrected.
office-queries-outcome-corrected-what = Post the correction first; the answer does not do it.
office-queries-outcome-explained = It is explained.
office-queries-outcome-explained-what = There was something to say, and nothing to change.
office-queries-words = Answer to the family
office-queries-words-hint = Only the family reads it. Leave out the names of others.
office-queries-answer-to = Answer the question about class { $number }
office-queries-send = Send the answer
office-queries-sent = Answered (class { $number }). The family sees it at once.
office-queries-add = Add to the answer
office-queries-to-class = To class { $number }

office-queries-erase = Erase the words
office-queries-erase-title = Erase the words of this question?
office-queries-erase-what = The words of the family and of the answers are gone for good, also for the family, and nothing brings them back. An open question is closed by it. That there was a question stays.
office-queries-erase-yes = Erase for good
office-queries-erased = The words are erased.
