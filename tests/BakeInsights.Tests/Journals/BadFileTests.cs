using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Files that can't be read at all: what the reader says of each, word for word.</summary>
public sealed class BadFileTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Path_that_leads_nowhere() => Refuses(
        _folder.File("nowhere.csv"),
        "There is no such file or folder.",
        "Check the spelling, or start a journal with 'bakeinsights new'.");

    [Fact]
    public void Folder_without_a_file_of_bakes()
    {
        _folder.Write("loaves.csv", "bake_id\n");

        Refuses(_folder.Path, "The folder has no bakes*.csv in it.", "Name the folder of a journal, or one CSV file of bakes.");
    }

    [Fact]
    public void Empty_file() => Refuses(
        _folder.Write("bakes.csv", ""), "The file is empty.", "It needs a header line and a line for each bake.");

    [Fact]
    public void Bytes_that_are_not_text() => Refuses(
        WriteBytes("baked_on\n2026-10-01\0\n"u8.ToArray()),
        "The file holds bytes that are not text in UTF-8, UTF-16 or Windows-1252.",
        "Save the table as CSV (UTF-8) and read that.");

    // 0x81 has no letter in Windows-1252 (Unicode Consortium, CP1252.TXT), and 0xE9 alone is not UTF-8.
    [Theory]
    [InlineData(new byte[] { 0xE9, 0x81 })]
    [InlineData(new byte[] { 0x90 })]
    public void Bytes_in_no_encoding_known_here(byte[] bytes) => Refuses(
        WriteBytes([.. "baked_on,notes\n2026-10-01,"u8, .. bytes, .. "\n"u8]),
        "The file holds bytes that are not text in UTF-8, UTF-16 or Windows-1252.",
        "Save the table as CSV (UTF-8) and read that.");

    [Fact]
    public void Bytes_behind_a_mark_of_UTF_8_that_are_not_UTF_8() => Refuses(
        WriteBytes([0xEF, 0xBB, 0xBF, .. "baked_on,notes\n2026-10-01,"u8, 0xE9, .. "\n"u8]),
        "The file holds bytes that are not text in UTF-8, UTF-16 or Windows-1252.",
        "Save the table as CSV (UTF-8) and read that.");

    [Fact]
    public void Text_in_four_bytes_a_letter() => Refuses(
        WriteBytes([0xFF, 0xFE, 0, 0, .. System.Text.Encoding.UTF32.GetBytes("baked_on\n2026-10-01\n")]),
        "The file holds bytes that are not text in UTF-8, UTF-16 or Windows-1252.",
        "Save the table as CSV (UTF-8) and read that.");

    [Theory]
    [InlineData(new byte[] { 0x50, 0x4B, 3, 4, 20, 0, 6, 0 })]
    [InlineData(new byte[] { 0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1 })]
    public void Workbook(byte[] bytes) => Refuses(
        WriteBytes(bytes),
        "This is a workbook or an archive, not a CSV file.",
        "Save the sheet as CSV (UTF-8) and read that.");

    [Theory]
    [InlineData("2026-10-01,500,325\n")]
    [InlineData("Bakes of October\nbake_id,baked_on\n")]
    [InlineData("bake_id,\"baked_on,notes\na,2026-10-01,\n")]
    [InlineData("\n\n")]
    [InlineData("\uFEFF")]
    public void File_without_a_header_of_bakes(string text) => Refuses(
        _folder.Write("bakes.csv", text),
        "The first line has no column baked_on, so it is not the header of a table of bakes.",
        "Start the file with a line of column names; 'bakeinsights new' writes one to copy.");

    [Fact]
    public void Line_too_long_to_be_a_bake() => Refuses(
        _folder.Write("bakes.csv", "baked_on,notes\n2026-10-01," + new string('x', 1 << 21) + "\n"),
        "A line is longer than 1024 KiB.",
        "See that this is a journal of bakes.");

    [Fact]
    public void File_that_another_program_keeps_to_itself()
    {
        var path = _folder.Write("bakes.csv", "baked_on\n2026-10-01\n");
        using var held = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.None);

        Refuses(path, "The file can't be opened.", "See that it is there, that it may be read, and that no program holds it.");
    }

    [Fact]
    public void File_that_is_cut_while_it_is_read()
    {
        var rows = string.Concat(Enumerable.Repeat("2026-10-01,rye\n", 50_000));
        var path = _folder.Write("bakes.csv", "baked_on,flour_kind\n" + rows);
        using var other = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite);

        var failure = Assert.Throws<JournalFileException>(
            () => BakeStream.Read(path, textsOf: 0, _ => other.SetLength(1_000)));

        Assert.Equal(
            ("The file became shorter while it was read.", "Let the program that writes it finish, and read it again."),
            (failure.Reason, failure.Remedy));
    }

    public static TheoryData<Exception, string, string> Failures => new()
    {
        { new IOException("disk"), "The file could not be read to its end.", "See that its disk is there and whole, and read it again." },
        { new FileNotFoundException(), "The file can't be opened.", "See that it is there, that it may be read, and that no program holds it." },
        { new UnauthorizedAccessException(), "The file can't be opened.", "See that it is there, that it may be read, and that no program holds it." },
    };

    [Theory]
    [MemberData(nameof(Failures))]
    public void Failure_of_the_system_is_told_in_words(Exception failure, string reason, string remedy)
    {
        var explained = JournalFiles.Explain("bakes.csv", failure)!;

        Assert.Equal((reason, remedy, failure), (explained.Reason, explained.Remedy, explained.InnerException));
    }

    [Fact]
    public void Error_of_the_program_is_not_told_as_one_of_the_file() =>
        Assert.Null(JournalFiles.Explain("bakes.csv", new InvalidOperationException()));

    [Fact]
    public void One_bad_file_of_a_folder_is_named_with_its_path()
    {
        _folder.Write("bakes-1.csv", "baked_on\n2026-10-01\n");
        var bad = _folder.Write("bakes-2.csv", "");

        var failure = Assert.Throws<JournalFileException>(() => Journal.Read(_folder.Path));

        Assert.Equal(bad, failure.Path);
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    public void Blank_path_is_a_programming_error(string path) => Assert.Throws<ArgumentException>(() => Journal.Read(path));

    private static void Refuses(string path, string reason, string remedy)
    {
        var failure = Assert.Throws<JournalFileException>(() => Journal.Read(path));

        Assert.Equal($"{path}: {reason} {remedy}", failure.Message);
        Assert.Equal((path, reason, remedy), (failure.Path, failure.Reason, failure.Remedy));
    }

    private string WriteBytes(byte[] bytes)
    {
        var path = _folder.File("bakes.csv");
        File.WriteAllBytes(path, bytes);
        return path;
    }
}
