namespace Watersown.Wording;

/// <summary>Words of the page where a person signs in, and of what the desk says on the console when it starts.</summary>
public sealed partial record SignInWords
{
    public required string Title { get; init; }

    public required string Why { get; init; }

    public required string Name { get; init; }

    public required string Password { get; init; }

    public required string Enter { get; init; }

    public required string WithPasskey { get; init; }

    public required string HaveCode { get; init; }

    public required string CodeWhy { get; init; }

    public required string Code { get; init; }

    public required string NewPassword { get; init; }

    public required string NewPasswordRule { get; init; }

    public required string SetPassword { get; init; }

    public required string PasskeyFailed { get; init; }

    public required string Address { get; init; }

    public required string OnlyHere { get; init; }

    public required string FirstCode { get; init; }

    public required string CodeLasts { get; init; }

    public required string PlainHttp { get; init; }

    public required string NoPages { get; init; }

    public required string StoryClock { get; init; }
}
