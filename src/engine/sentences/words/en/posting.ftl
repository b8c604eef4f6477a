# What stands in the way of a posting or a ruling, for the office.

card-not-signed = the card is not signed
card-to-be-amended = an entry was added since: the card must be amended
card-of-judge-not-in = { $judge }'s card is not in
reason-missing = it is missing

ruling-fault-too-few = A tie has two entries or more.
ruling-fault-twice = An entry stands in it twice.
ruling-fault-declined = A declined run-off orders nobody: name the tied entries in one group.
ruling-fault-share = A shared place is one group.
ruling-fault-no-tie = These entries are not one tie that is open now; name each of its entries once.
