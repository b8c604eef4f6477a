# What more than one page says.
shared-name = Ringledger
shared-language = Language
shared-language-en = English
shared-language-de = Deutsch
shared-light = Light
shared-light-device = As this device
shared-light-light = Bright
shared-light-dark = Dark
shared-light-glare = Full sun
shared-caution = Ringledger records and adds up; it does not rule. The decisions of judges, steward and ground jury stand over it.
shared-practice = Practice: nothing of this counts.
shared-skip = To the content
shared-try-again = Try again
shared-cancel = Leave it
shared-back = Back

# Where a class stands (state of the service in the attribute).
shared-state-setting-up = being set up
shared-state-drawn = order of go drawn
shared-state-called = called to the ring
shared-state-under-way = under way
shared-state-cards-in = all cards are in
shared-state-provisional = posted, not yet official
shared-state-official = official
shared-state-corrected = official, corrected
shared-state-cancelled = cancelled
shared-state-combined = combined into another class

# How an entry stands in its class.
shared-status-entered = entered
shared-status-checked-in = checked in
shared-status-scratched = scratched
shared-status-no-show = did not come
shared-status-excused = excused
shared-status-moved = moved to another class

# An address that leads nowhere.
shared-nothing-here = There is nothing here
shared-nothing-here-why = The address may be mistyped, or the show may have taken this page down.
shared-all-shows = All shows

# Around the pages that everyone reads.
shared-where-you-are = Where you are
shared-connection-live = Live: what happens shows here at once.
shared-connection-looking = Looks for news every half minute.
shared-connection-lost = No connection. What you see is from { $time }; it goes on by itself.
shared-connection-back = The connection is back.
shared-without-script = This page does not move by itself in this browser. Load it again to see what is new.
shared-show-time = Times are those of the show grounds ({ $zone }).
shared-too-much = Too much was asked from here
shared-too-much-why = Everybody at one place shares a limit of requests in a minute. Wait a minute, then load the page again.
shared-in-trouble = The service is in trouble
shared-in-trouble-why = Nothing of what was posted is lost. Load the page again in a minute; if it stays so, tell the show office.

# A mark as it is spoken: "plus one half", "minus one and a half", "zero".
shared-spoken-mark = { $sign ->
    [plus] plus
    [minus] minus
   *[none] {""}
  } { $half ->
    [only] one half
    [and] { $whole } and a half
   *[no] { $whole }
  }

# The drawing of a pattern.
shared-drawing-label = Drawing of the pattern from above, { $maneuvers } { $maneuvers ->
    [one] maneuver
   *[other] maneuvers
  }{ $cones ->
    [0] .
    [one] , with cone { $letters }.
   *[other] , with the letters { $letters }.
  } The maneuvers stand beside it in words.
shared-drawing-highlighted = Maneuver { $highlighted } stands out.
shared-drawing-start = Start
shared-drawing-finish = Finish
shared-drawing-walk = Walk
shared-drawing-trot = Trot or jog
shared-drawing-canter = Canter or lope
shared-drawing-back = Back
shared-drawing-other = Another gait
shared-drawing-halt = Halt
shared-drawing-turn = Turn, so many times around
shared-drawing-flying-change = Flying change of lead
shared-drawing-simple-change = Simple change of lead
shared-drawing-side-pass = Side-pass
shared-drawing-pole = Pole
shared-drawing-gate = Gate
shared-drawing-bridge = Bridge
shared-drawing-water = Water
shared-drawing-judge = Judge
