using System.Runtime.Versioning;
using System.Text;
using BakeInsights.TestKit;
using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public sealed class BakeAppenderTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("bake_id,baked_on,flour_g\nA-1,2026-10-01,500\n", "A-2,2026-10-02,510\n")]
    [InlineData("bake_id,baked_on,flour_g\r\nA-1,2026-10-01,500\r\n", "A-2,2026-10-02,510\r\n")]
    [InlineData("bake_id,baked_on,flour_g\r\nA-1,2026-10-01,500", "\r\nA-2,2026-10-02,510\r\n")]
    [InlineData("\uFEFFbake_id,baked_on,flour_g\nA-1,2026-10-01,500\n", "A-2,2026-10-02,510\n")]
    [InlineData("flour_g,mine,,baked_on,flour_oz,Bake_ID\n500,x,,2026-10-01,,A-1\n", "510,,,2026-10-02,,A-2\n")]
    [InlineData("bake_id,baked_on,flour_g\n", ",2026-10-02,510\n")]
    [InlineData("baked_on,flour_g\n2026-10-01,500\n", "2026-10-02,510\n")]
    public void Line_keeps_to_the_file_and_the_bytes_before_stay(string before, string line)
    {
        var path = _folder.Write("bakes.csv", before);
        Append(path, ("baked_on", "2026-10-02"), ("flour_g", "510"));

        Assert.Equal(before + line, Encoding.UTF8.GetString(File.ReadAllBytes(path)));
        Assert.Equal([path], Directory.GetFileSystemEntries(_folder.Path));
    }

    [Fact]
    public void Any_bakes_stay_byte_for_byte_and_value_for_value() =>
        Gen.Select(RandomBakes.Any, RandomBakes.Text, Gen.OneOf("\n", "\r\n"), Gen.Bool, Gen.Bool).Sample((bakes, note, lineEnd, mark, ends) =>
        {
            using var folder = new TemporaryFolder();
            var text = Csv.Canonical(bakes).Replace("\n", lineEnd, StringComparison.Ordinal).Replace("baked_on", "baked_on,lane_remark", StringComparison.Ordinal);
            text = (mark ? "\uFEFF" : "") + (ends ? text : text.TrimEnd('\r', '\n'));
            var path = folder.Write("bakes.csv", text);
            var before = File.ReadAllBytes(path);
            var journal = Journal.Read(path);

            var added = Append(path, ("baked_on", "2026-10-02"), ("lane_remark", note));

            Assert.Equal(before, File.ReadAllBytes(path)[..before.Length]);
            var after = Journal.Read(path);
            Assert.Equal(journal.Bakes.Count + 1, after.Bakes.Count);
            Assert.Equal(journal.SetAside, after.SetAside);
            Assert.Equal(Csv.Canonical(journal.Bakes), Csv.Canonical([.. after.Bakes.SkipLast(1)]));
            Assert.Equal((added.Id, note), (after.Bakes[^1].Id, after.Bakes[^1].OwnColumns["lane_remark"]));
        }, iter: 30);

    [Fact]
    public void Last_file_of_a_folder_gets_the_bake()
    {
        var first = _folder.Write("bakes-2026-09.csv", "bake_id,baked_on\nA-7,2026-09-01\n");
        var last = _folder.Write("bakes-2026-10.csv", "bake_id,baked_on\n");

        var added = Append(_folder.Path, ("baked_on", "2026-10-02"));

        Assert.Equal(("A-8", "bakes-2026-10.csv", 2L), (added.Id, added.Origin.File, added.Origin.Line));
        Assert.Equal("bake_id,baked_on\nA-7,2026-09-01\n", File.ReadAllText(first));
        Assert.Equal("bake_id,baked_on\nA-8,2026-10-02\n", File.ReadAllText(last));
    }

    [Fact]
    public void Name_of_a_bake_in_any_file_is_refused_and_the_journal_stays()
    {
        _folder.Write("bakes-1.csv", "bake_id,baked_on\nx,2026-09-01\n");
        var last = _folder.Write("bakes-2.csv", "bake_id,baked_on\n");

        var failure = Assert.Throws<JournalFileException>(() => Append(_folder.Path, ("baked_on", "2026-10-02"), ("bake_id", "x")));

        Assert.Equal(
            $"{last}: The bake_id x is already that of bakes-1.csv, line 2. Give another, or none. The journal is as it was.", failure.Message);
        Assert.Equal("bake_id,baked_on\n", File.ReadAllText(last));
    }

    [Fact]
    public void Bake_added_meanwhile_is_kept_and_the_next_name_is_given()
    {
        var path = _folder.Write("bakes.csv", "bake_id,baked_on\nA-1,2026-09-01\n");
        var entry = Entry(path, ("baked_on", "2026-10-02"));
        Append(path, ("baked_on", "2026-10-01"));

        Assert.Null(entry.Read().Objection);
        Assert.Equal("A-3", BakeAppender.Append(entry, CancellationToken.None).Id);
        Assert.Equal("bake_id,baked_on\nA-1,2026-09-01\nA-2,2026-10-01\nA-3,2026-10-02\n", File.ReadAllText(path));
    }

    [Fact]
    public void Columns_changed_meanwhile_are_noticed()
    {
        var path = _folder.Write("bakes.csv", "bake_id,baked_on\n");
        var entry = Entry(path, ("baked_on", "2026-10-02"));
        _folder.Write("bakes.csv", "baked_on,bake_id\n");

        var failure = Assert.Throws<JournalFileException>(() => BakeAppender.Append(entry, CancellationToken.None));

        Assert.Equal("The journal's columns changed while the bake was being filled in.", failure.Reason);
    }

    [Fact]
    public void Row_that_the_reader_would_set_aside_is_not_added()
    {
        var path = _folder.Write("bakes.csv", "bake_id,baked_on\n");

        var failure = Assert.Throws<JournalFileException>(() => Append(path, ("baked_on", "soon")));

        Assert.Equal("With this line the journal would no longer be read as before.", failure.Reason);
        Assert.Equal("bake_id,baked_on\n", File.ReadAllText(path));
        Assert.Single(Directory.GetFileSystemEntries(_folder.Path));
    }

    [Fact]
    public void Character_that_the_file_can_not_hold_is_refused()
    {
        var path = _folder.File("bakes.csv");
        File.WriteAllBytes(path, [.. "baked_on,notes\n2026-10-01,caf"u8, 0xE9, (byte)'\n']);

        var failure = Assert.Throws<JournalFileException>(() => Append(path, ("baked_on", "2026-10-02"), ("notes", "漢")));

        Assert.Equal(
            $"{path}: Its encoding, windows-1252, has no way to write '漢'. "
            + "Write the text without that character, or save the file as CSV (UTF-8) first.",
            failure.Message);
    }

    [Fact]
    public void Link_to_a_file_stays_a_link()
    {
        var path = _folder.Write("real.csv", "baked_on\n");
        var link = _folder.File("bakes.csv");
        File.CreateSymbolicLink(link, path);

        Append(link, ("baked_on", "2026-10-02"));

        Assert.NotNull(new FileInfo(link).LinkTarget);
        Assert.Equal("baked_on\n2026-10-02\n", File.ReadAllText(path));
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public void File_keeps_its_permissions()
    {
        var path = _folder.Write("bakes.csv", "baked_on\n");
        File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead);

        Append(path, ("baked_on", "2026-10-02"));

        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead, File.GetUnixFileMode(path));
    }

    [Fact]
    [UnsupportedOSPlatform("windows")]
    public void File_marked_as_not_to_be_written_is_left_alone()
    {
        var path = _folder.Write("bakes.csv", "baked_on\n");
        File.SetUnixFileMode(path, UnixFileMode.UserRead);

        var failure = Assert.Throws<JournalFileException>(() => Append(path, ("baked_on", "2026-10-02")));

        Assert.Equal(
            $"{path}: The bake can't be added: the file is marked as not to be written. "
            + "Allow writing to it, or add to another journal. The journal is as it was.",
            failure.Message);
        Assert.Equal("baked_on\n", File.ReadAllText(path));
    }

    private static Bake Append(string path, params (string Name, string Text)[] cells) =>
        BakeAppender.Append(Entry(path, cells), CancellationToken.None);

    private static BakeEntry Entry(string path, params (string Name, string Text)[] cells)
    {
        var form = BakeForm.Open(path);
        return cells.Aggregate(BakeEntry.Of(form), (entry, cell) => entry.With(form.Find(cell.Name)!.Value.Field, cell.Text, null));
    }
}
