# The office: signing in, the shows, the day, phones, accounts.
office-one-moment = One moment …
office-done = Done
office-field-fault = This is missing, or not in the form that is asked for.
office-field-as = Not yet: { $message }.
office-table = Table: { $caption }
office-reason = Reason
office-look-at-fields = Look at the fields that are marked; what you typed is still there.
office-to-do = To do
office-copy = Copy
office-copied = Copied.
office-copy-by-hand = The browser does not copy here. The text is selected: copy it by hand.

# Signing in.
office-sign-in = Sign in
office-sign-in-name = Name to sign in
office-sign-in-password = Password
office-sign-in-code = One-time code
office-sign-in-code-hint = Six digits, as the authenticator app shows them now.
office-sign-in-wait = { $seconds ->
    [one] Wait one second, then try again.
   *[other] Wait { $seconds } seconds, then try again.
  }
office-sign-out = Sign out
office-signed-out = You are signed out.
office-session-ended = Your session has ended
office-session-ended-why = Sign in again, and what you were doing goes on. What you typed is still here.
office-session-somebody-else = Sign in as somebody else (what was typed is dropped)
office-sessions = Where you are signed in
office-session-line = Since { $begun }, last used { $seen }, ends { $ends }.
office-session-this = This window
office-session-end = End it
office-session-ended-other = That session is ended.

# An account is set up.
office-set-up = Set up your account
office-set-up-first = First time here? Set up your account with the code of your manager.
office-set-up-what = Your manager gave you a code. It is good once, and for a day.
office-set-up-code = Set-up code
office-set-up-code-hint = Letters and digits, as they were given to you.
office-set-up-go-on = Go on
office-set-up-have = I have a password already
office-set-up-hello = Welcome, { $name }. Two things, and you are in.
office-set-up-factor = 1. An authenticator app
office-set-up-scan = Scan this with the authenticator app on your phone. From then on it shows six digits that change every half minute.
office-set-up-qr = QR code for the authenticator app; the same stands below it as text
office-set-up-by-hand = No camera? Type this key into the app:
office-set-up-open-app = Open in an app on this device
office-set-up-password = 2. A password
office-set-up-new-password = New password
office-set-up-password-hint = Long is better than tricky: some words that nobody would put together, or what your password manager proposes.
office-set-up-finish = Set up and sign in
office-password = Password
office-password-present = Present password
office-password-change = Change the password
office-password-changed = The password is changed. Your other sessions are ended.

# The shows.
office-shows = Shows
office-shows-real = Shows
office-shows-practice = Practice
office-shows-none = There is no show yet that you work at. A manager sets one up, or gives your account a show.
office-rehearse = Rehearse this show
office-rehearsal-made = A practice show is made: the same classes and judges, and nobody's name who rides.
office-nav-show = This show
office-nav-own = Your account
office-entries = Entries
office-queries-way = Queries

# The day.
office-day = The day
office-day-empty = There is no class yet. Classes are added over the program of the show.
office-needs = Needs the office now
office-needs-none = Nothing waits for the office just now.
office-need-tie-open = { $count ->
    [one] All cards are in; a tie is open.
   *[other] All cards are in; { $count } ties are open.
  }
office-need-changed-since = Changed since version { $version } was posted.
office-need-to-be-amended = An entry came in after the card was signed: { $judges } must amend.
office-need-card-missing = { $missing ->
    [one] One of { $expected } cards is missing; the others are in.
   *[other] { $missing } of { $expected } cards are missing; the others are in.
  }
office-need-ready-to-post = All cards are in: ready to post.
office-no-ring = No ring yet
office-ring-caption = Classes of { $ring }
office-class = Class
office-time = Time
office-state = State
office-cards-in = { $in } of { $expected } cards in
office-version = version { $version }
office-live-streaming = live
office-live-polling = asked every few seconds
office-live-no-answer = The service does not answer. What you see may be old; it is asked again by itself.

# Finding, and short keys.
office-find = Find
office-find-hint = Class, back number, name
office-found = { $count ->
    [0] Nothing found.
    [one] One found.
   *[other] { $count } found.
  }
office-keys = Short keys
office-keys-wanted = Short keys work (they rest while you type)
office-key-find = Find a class or a back number
office-key-help = This list
office-key-next-part = Next part of the screen
office-key-part-before = Part before
office-key-next-need = Next class that needs the office

# Phones.
office-phones = Phones
office-gate = the gate
office-role-judge = judge
office-role-scribe = scribe
office-role-gate = gate
office-invite = Pair a phone
office-people-none = Nobody who may judge is entered yet. Add people where a panel is seated.
office-pair-judge = Pair judge's phone
office-pair-scribe = Pair scribe's phone
office-pair-gate = Pair the gate's phone
office-invite-judge = Phone of judge { $name }
office-invite-scribe = Phone of { $name }'s scribe
office-invite-gate = Phone of the gate
office-invite-label = What to call the phone
office-invite-label-hint = If you like: "blue cover". You see it in the list of phones.
office-invite-make = Make the code
office-invite-show = Scan this with the phone, or type the code at the page of pairing. It is good for one phone.
office-invite-qr = QR code that opens the page of pairing; the code stands below it
office-invite-ends = Good until { $time }.
office-invite-link = The link, to send it
office-invite-taken = A phone has taken the code up: it is paired.
office-invitations = Codes that wait
office-invitations-none = No code waits for a phone.
office-invitation-take-back = Take back
office-invitation-taken-back = The code is taken back.
office-phones-paired = Paired phones
office-phones-none = No phone is paired yet. Make a code above and hold it before the phone's camera.
office-phones-gone = Taken off
office-phones-gone-none = No phone was taken off.
office-phone-whose = Whose
office-phone-role = As
office-phone-since = Since
office-phone-gone = taken off { $time }.
office-phone-revoke = Take off
office-revoke-title = Take this phone off the show?
office-revoke-what = The phone of { $name } can neither write nor sign from now on. What it had sent is kept; another phone goes on from there with a new code. This cannot be undone.
office-revoke-why = Why
office-revoke-do = Take it off
office-revoke-keep = Keep it
office-revoke-done = The phone is off the show.

# Accounts of the office.
office-accounts = Accounts
office-accounts-managers = Accounts are looked after by managers.
office-accounts-who = Who works in the office
office-account-name = Name
office-account-duty = Duty
office-account-where = Where
office-account-everywhere = every show
office-account-state-invited = code given, not set up yet
office-account-state-set-up-ended = code ended before it was used
office-account-state-active = active
office-account-state-closed = closed
office-account-make = Make an account
office-account-reset = Reset
office-account-reset-ask = Reset the account of { $name }?
office-account-reset-why = Password, second factor and all sessions are void at once. You get a code with which the account is set up anew.
office-account-reset-done = The account of { $name } is reset.
office-account-close = Close
office-account-close-ask = Close the account of { $name }?
office-account-close-why = It is closed for good: nobody signs in with it any more. What was done under it stays on record.
office-account-close-done = The account of { $name } is closed.
office-account-code = Set-up code
office-account-code-what = Give this code to { $name }, who types it at { $address }. It is shown this once.
office-account-code-ends = Good until { $time }, once.
office-account-code-given = I have passed it on
office-duty-manager = show manager
office-duty-secretary = show secretary
office-duty-points-secretary = points secretary
