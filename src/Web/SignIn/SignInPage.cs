using System.Globalization;
using System.Text;
using Watersown.Records.Files.Sheets;
using Watersown.Wording;

namespace Watersown.Web.SignIn;

/// <summary>The page where a person signs in: a form that works without a script, and a passkey where the browser knows them.</summary>
internal static class SignInPage
{
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    private const string Css = """
        :root{color-scheme:light dark}
        body{font:18px/1.5 "Atkinson Hyperlegible","Liberation Sans",Arial,Helvetica,sans-serif;margin:0;background:#fbf8f1;color:#14181a}
        main{max-width:30rem;margin:2rem auto;padding:0 1rem}
        h1{font-size:1.6rem;line-height:1.2}
        label{display:block;font-weight:700;margin:1rem 0 .25rem}
        input{font:inherit;width:100%;box-sizing:border-box;min-height:56px;padding:8px 12px;border:2px solid #14181a;background:#fff;color:#14181a}
        button{font:inherit;font-weight:700;min-height:56px;width:100%;margin-top:1rem;padding:8px 16px;border:3px solid #14181a;background:#14181a;color:#fff}
        button.second{background:transparent;color:inherit}
        :focus-visible{outline:4px solid #14181a;outline-offset:2px}
        summary{min-height:56px;padding:16px 0;font-weight:700;cursor:pointer}
        .problem{border:3px solid #14181a;padding:.5rem 1rem;font-weight:700}
        [hidden]{display:none}
        @media (prefers-color-scheme:dark){body{background:#101416;color:#eee8da}input{background:#101416;color:#eee8da;border-color:#eee8da}button{background:#eee8da;color:#101416;border-color:#eee8da}:focus-visible{outline-color:#eee8da}.problem{border-color:#eee8da}}

        """;

    /// <summary>The script for passkeys, for this page and for the desk's settings.</summary>
    public static ReadOnlyMemory<byte> Script { get; } = Load();

    public static string Write(string farm, Language language, Problem? problem)
    {
        var words = Words.In(language).SignIn;
        var title = Text(Template.Fill(words.Title, ("farm", farm)));
        var html = new StringBuilder(4096);
        html.Append(Plain, $"<!doctype html>\n<html lang=\"{Words.In(language).Common.Tag}\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">\n<link rel=\"icon\" href=\"data:,\">\n<title>{title}</title>\n<style>\n{Css}</style>\n<script src=\"/sign-in.js\" defer></script>\n</head>\n<body>\n<main>\n<h1>{title}</h1>\n<p>{Text(words.Why)}</p>\n");
        if (problem is not null) html.Append(Plain, $"<p class=\"problem\" role=\"alert\">{Text(Wording.Say.Sentence(problem, language))}</p>\n");
        html.Append(Plain, $"<form method=\"post\" action=\"/sign-in\">\n<label for=\"name\">{Text(words.Name)}</label><input id=\"name\" name=\"name\" autocomplete=\"username webauthn\" maxlength=\"100\" required>\n");
        html.Append(Plain, $"<label for=\"password\">{Text(words.Password)}</label><input id=\"password\" name=\"password\" type=\"password\" autocomplete=\"current-password\" maxlength=\"200\" required>\n<button>{Text(words.Enter)}</button>\n</form>\n");
        html.Append(Plain, $"<button class=\"second\" id=\"passkey\" hidden>{Text(words.WithPasskey)}</button>\n<p id=\"passkey-failed\" class=\"problem\" role=\"alert\" hidden>{Text(words.PasskeyFailed)}</p>\n");
        html.Append(Plain, $"<details{(problem?.Where is "code" ? " open" : string.Empty)}><summary>{Text(words.HaveCode)}</summary>\n<p>{Text(words.CodeWhy)}</p>\n<form method=\"post\" action=\"/sign-in\">\n");
        html.Append(Plain, $"<label for=\"name2\">{Text(words.Name)}</label><input id=\"name2\" name=\"name\" autocomplete=\"username\" maxlength=\"100\" required>\n<label for=\"code\">{Text(words.Code)}</label><input id=\"code\" name=\"code\" autocomplete=\"one-time-code\" autocapitalize=\"none\" maxlength=\"40\" required>\n");
        html.Append(Plain, $"<label for=\"fresh\">{Text(words.NewPassword)}</label><input id=\"fresh\" name=\"password\" type=\"password\" autocomplete=\"new-password\" minlength=\"{Passwords.Shortest}\" maxlength=\"{Passwords.Longest}\" aria-describedby=\"rule\" required>\n<p id=\"rule\">{Text(Template.Fill(words.NewPasswordRule, ("least", Say.Number(Passwords.Shortest))))}</p>\n<button>{Text(words.SetPassword)}</button>\n</form>\n</details>\n</main>\n</body>\n</html>\n");
        return html.ToString();
    }

    private static string Text(string words) => SheetMarkup.Text(words);

    private static byte[] Load()
    {
        using var stream = typeof(SignInPage).Assembly.GetManifestResourceStream("Watersown.Web.sign-in.js")!;
        using var kept = new MemoryStream();
        stream.CopyTo(kept);
        return kept.ToArray();
    }
}
