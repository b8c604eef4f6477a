# The office.
office-one-moment = One moment …
office-day = The day
office-sign-in = Sign in
office-sign-in-name = Name to sign in
office-sign-in-password = Password
office-sign-in-code = One-time code
office-sign-in-code-hint = Six digits, as the authenticator app shows them now.
office-sign-in-wait = { $seconds ->
    [one] Wait one second, then try again.
   *[other] Wait { $seconds } seconds, then try again.
  }
office-session-ended = Your session has ended
office-session-ended-why = Sign in again, and what you were doing goes on. What you typed is still here.
