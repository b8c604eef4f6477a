# The office: how close a class was, and how far its judges agree.
office-closeness-title = How close was it, and do the judges agree
office-closeness-class = Class { $number }, { $name }
office-closeness-to-class = To the class
office-closeness-not-posted = Nothing of this class is posted yet. How close it was is shown once it is, so that nobody is steered by it before.
office-closeness-caution = These numbers say how the cards differ, not who was right. Nobody's placing changes by them.
office-closeness-as-table = The same as a table

office-closeness-how-close = How close it was
office-closeness-margins = What would have swapped two neighbors
office-closeness-margins-of = What would have swapped two neighbors, on the card of { $judge }
office-closeness-no-margin = There are no two neighbors whom a change on one card could have swapped.
office-closeness-by-points = { $one ->
    [yes] { $size } point
   *[no] { $size } points
  }
office-closeness-by-places = { $one ->
    [yes] { $size } place
   *[no] { $size } places
  }
office-closeness-status = by the pattern
office-closeness-no-single-change = no one card
office-closeness-place = Place
office-closeness-ahead = Ahead
office-closeness-behind = Behind
office-closeness-change = Smallest change
office-closeness-in-words = In words

office-closeness-agree = Do the judges agree
office-closeness-places = Where each judge had each entry
office-closeness-one-judge = One judge alone agrees with herself.
office-closeness-number = No.
office-closeness-apart = Places apart
office-closeness-left-off = left off
office-closeness-pairs = Judges two by two
office-closeness-two = Two judges
office-closeness-same-order = Same order (+1) to reverse (−1)
office-closeness-entries = Entries on both cards
office-closeness-scales = Each judge's own scale
office-closeness-judge-name = Judge
office-closeness-mean = Mean score
office-closeness-spread = Spread around it

office-closeness-drift = Each judge over the order of go
office-closeness-drift-caution = A drift is no fault by itself: the better riders may have gone late. Two judges who saw the same goes and drifted apart are worth a look.
office-closeness-little-drift = No judge's scores rose or fell much from the first go to the last.
office-closeness-no-order = There are no scores in an order of go to draw: a rail class, or places only.
office-closeness-no-drift = Too few goes for a line.
office-closeness-drift-by = { $by } points over ten goes.
office-closeness-judge = { $seat } { $name }
office-closeness-scores-of = Scores of { $name } in the order of go
office-closeness-go = Go
office-closeness-score = Score
