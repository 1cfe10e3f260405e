namespace Watersown.Wording;

public sealed partial record SignInWords
{
    public static SignInWords English { get; } = new()
    {
        Title = "Sign in to {farm}",
        Why = "This desk can be reached from other machines, so it asks who you are. Nobody outside is asked and nothing is sent to anybody.",
        Name = "Name",
        Password = "Password",
        Enter = "Sign in",
        WithPasskey = "Sign in with a passkey of this phone or computer",
        HaveCode = "I have a code",
        CodeWhy = "A code lets you in once, to choose a password. The owner gives it to you; the first one is shown where the desk was started.",
        Code = "Code",
        NewPassword = "New password",
        NewPasswordRule = "At least {least} letters. Four words that do not belong together are easy to keep in mind and hard to guess.",
        SetPassword = "Keep this password and sign in",
        PasskeyFailed = "The passkey did not work. Sign in with the password.",
        Address = "The desk is open at {address}",
        OnlyHere = "Only this machine can reach it; nobody has to sign in.",
        FirstCode = "To sign in as {name} for the first time, open {address} and give this code: {code}",
        CodeLasts = "The code works once, until {when}.",
        PlainHttp = "Passwords travel unprotected over {address}. Put a server with https in front, as docs/guide/desk.md tells.",
        NoPages = "The desk's pages are not in {folder}; only its data is served.",
        StoryClock = "The desk's clock was set to {when} and runs on from there.",
    };
}
