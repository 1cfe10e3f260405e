using Watersown.Records.Database;

namespace Watersown.Database;

public sealed class PhotosAndSettingsTests
{
    public static TheoryData<Engine> Engines => Shelf.Engines;

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task A_photo_comes_out_as_it_went_in_and_is_kept_once(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using var book = await shelf.OpenAsync();
        var photo = Some.Photo(70_000);
        var kept = (await book.AddAttachmentAsync(Some.Id(1), "image/jpeg", photo, "ada")).Value;
        Assert.Equal(kept, (await book.AddAttachmentAsync(Some.Id(1), "image/jpeg", photo, "ben")).Value);
        Assert.Equal(photo, await book.AttachmentContentAsync(Some.Id(1)));
        Assert.Equal(kept, await book.AttachmentAsync(Some.Id(1)));
        Assert.Equal(BookProblems.AttachmentDiffers, Assert.Single((await book.AddAttachmentAsync(Some.Id(1), "image/jpeg", Some.Photo(70_000, 8))).Problems).Kind);
        Assert.Null(await book.AttachmentContentAsync(Some.Id(2)));
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task Only_photos_of_a_sensible_size_are_taken(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using var book = await shelf.OpenAsync();
        Assert.Equal(BookProblems.AttachmentTooLarge, await FaultAsync(book, Some.Id(1), "image/jpeg", Some.Photo(BookLimits.AttachmentBytesMost + 1)));
        Assert.Equal(BookProblems.AttachmentNotAPhoto, await FaultAsync(book, Some.Id(1), "image/png", Some.Photo()));
        Assert.Equal(BookProblems.AttachmentNotAPhoto, await FaultAsync(book, Some.Id(1), "text/html", "<script>"u8.ToArray()));
        Assert.Equal(BookProblems.AttachmentName, await FaultAsync(book, "../../etc", "image/jpeg", Some.Photo()));
        Assert.True((await book.AddAttachmentAsync(Some.Id(3), "image/png", (byte[])[0x89, .. "PNG\r\n\u001a\n"u8, 1])).HasValue);
        Assert.True((await book.AddAttachmentAsync(Some.Id(4), "image/webp", "RIFF1234WEBPVP8 "u8.ToArray())).HasValue);
    }

    [Theory]
    [MemberData(nameof(Engines))]
    public async Task A_setting_is_the_last_that_was_set(Engine engine)
    {
        await using var shelf = await Shelf.OfAsync(engine);
        await using var book = await shelf.OpenAsync();
        Assert.Null(await book.SettingAsync("tiles"));
        await book.SetAsync("tiles", "one");
        await book.SetAsync("tiles", "two");
        Assert.Equal("two", await book.SettingAsync("tiles"));
        await book.SetAsync("tiles", null);
        Assert.Null(await book.SettingAsync("tiles"));
    }

    private static async Task<ProblemKind> FaultAsync(Book book, string id, string mediaType, byte[] content) =>
        Assert.Single((await book.AddAttachmentAsync(id, mediaType, content)).Problems).Kind;
}
