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
