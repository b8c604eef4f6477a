# The page on which a phone is paired.
pair-title = Pair this phone
pair-opening = One moment: looking whether this phone is paired already.
pair-asking = Asking the service …
pair-pairing = Pairing …

pair-no-key-title = This phone cannot be paired here
pair-no-answer-title = This phone has its key

pair-code-why = The show office gives you a code for your seat. It is good once, and for a short time.
pair-code = Code
pair-code-like = XK7P-4M2Q
pair-code-hint = Eight letters and digits, as the office reads them to you.
pair-code-not-whole = The code is not whole.
pair-code-not-whole-do = It has eight letters and digits, like XK7P-4M2Q.
pair-code-none = That is no code.
pair-code-none-do = Read it again, sign by sign: it looks like XK7P-4M2Q.
pair-key-stays = The phone makes a key of its own, which never leaves it. Whoever holds this phone signs with that key: keep it locked.
pair-pair = Pair this phone

pair-who-judge = This phone is Judge { $name }’s
pair-who-scribe = This phone writes for Judge { $name }
pair-who-gate = This phone is at the gate
pair-who-gate-called = This phone is at the gate: { $label }
pair-for = for { $show }
pair-for-practice = for practice: { $show }
pair-what-for-judge = Cards are written and signed on it.
pair-what-for-scribe = It enters what the judge calls; only the judge’s own phone signs.
pair-what-for-gate = It calls classes and marks who does not come.
pair-paired-already = This phone is paired already.
pair-paired-already-do = The code in the link was not used. If the phone shall change hands, let it go first.
pair-classes = Classes
pair-class-heard = Class { $number }
pair-no-classes = No class yet. They appear here as soon as the office seats the panel.
pair-seat-left = this judge left the panel
pair-seat-signed = { $state }; the card is signed
pair-to-classes = To the classes
pair-to-gate = To the gate
pair-lost = Lost the phone, or is it going home? Tell the office; it can shut this phone out at once.
pair-look-again = Look again
pair-let-go = Let this phone go
pair-let-go-title = Let this phone go?
pair-let-go-what = It forgets its key for good and can neither write nor sign any more. What was saved stays with the service, and a phone with a new code goes on from there.
pair-let-go-unsent = { $unsent ->
    [one] One change on this phone has not been sent. It would be lost: open the judge’s page where there is signal first.
   *[other] { $unsent } changes on this phone have not been sent. They would be lost: open the judge’s page where there is signal first.
}
pair-let-go-keep = Keep it
pair-let-go-do = Let it go
