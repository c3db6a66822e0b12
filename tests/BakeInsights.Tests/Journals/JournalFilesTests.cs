using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Journals of several files, and files as spreadsheets on other systems save them.</summary>
public sealed class JournalFilesTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Files_of_a_folder_are_read_in_the_order_of_their_names()
    {
        _folder.Write("bakes-2026-10.csv", "bake_id,baked_on\nc,2026-10-01\n");
        _folder.Write("bakes-2026-09.csv", "baked_on,bake_id\n2026-09-03,a\n2026-09-01,b\n");
        _folder.Write("bakes.csv", "bake_id,baked_on\nd,2026-01-01\n");

        var journal = Journal.Read(_folder.Path);

        Assert.Equal(["a", "b", "c", "d"], journal.Bakes.Select(bake => bake.Id));
        Assert.Equal(new SourceLine("bakes-2026-09.csv", 3), journal.Bakes[1].Origin);
        Assert.Equal(4, journal.Rows);
    }

    [Fact]
    public void Other_files_of_the_folder_are_left_alone()
    {
        _folder.Write("bakes.csv", "baked_on\n2026-10-01\n");
        _folder.Write("my loaves.csv", "not;a\0table\n");
        _folder.Write("README.md", "# Bakes\n");

        Assert.Equal(1, Journal.Read(_folder.Path).Rows);
    }

    [Fact]
    public void Of_one_name_in_two_files_the_first_stays_and_the_notice_names_both_places()
    {
        _folder.Write("bakes-1.csv", "bake_id,baked_on\nx,2026-09-01\na,2026-09-02\n");
        _folder.Write("bakes-2.csv", "bake_id,baked_on\na,2026-10-01\ny,2026-10-02\n");

        var journal = Journal.Read(_folder.Path);

        Assert.Equal(["x", "a", "y"], journal.Bakes.Select(bake => bake.Id));
        Assert.Equal(new DateOnly(2026, 9, 2), journal.Bakes[1].BakedOn);
        Assert.Equal(
            new Notice(
                "bakes-2.csv", 2, "bake_id", "BAKE_ID_TWICE", Gravity.Refused, "a",
                "This bake_id is already that of bakes-1.csv, line 3; the first stays.",
                "Give each bake a bake_id of its own, or delete the copy."),
            journal.Notices.Single());
    }

    [Fact]
    public void Bakes_without_a_name_are_named_for_their_file_and_line()
    {
        _folder.Write("bakes-1.csv", "baked_on\n2026-09-01\n");
        _folder.Write("bakes-2.csv", "baked_on\n2026-10-01\n");

        Assert.Equal(["bakes-1:2", "bakes-2:2"], Journal.Read(_folder.Path).Bakes.Select(bake => bake.Id));
    }

    [Fact]
    public void Journal_is_named_for_its_folder_or_file()
    {
        var file = _folder.Write("bakes-oct.csv", "baked_on\n2026-10-01\n");
        var folder = new DirectoryInfo(_folder.Path).Name;

        Assert.Equal("bakes-oct.csv", Journal.Read(file).Name);
        Assert.Equal(folder, Journal.Read(_folder.Path).Name);
        Assert.Equal(folder, Journal.Read(_folder.Path + Path.DirectorySeparatorChar).Name);
    }

    [Theory]
    [InlineData("bake_id,baked_on,notes\na,2026-10-01,été 76 °F\nb,2026-10-02,\n")]
    [InlineData("bake_id,baked_on,notes\r\na,2026-10-01,été 76 °F\r\nb,2026-10-02,\r\n")]
    [InlineData("\uFEFFbake_id,baked_on,notes\r\na,2026-10-01,été 76 °F\r\nb,2026-10-02,\r\n")]
    [InlineData("bake_id,baked_on,notes\ra,2026-10-01,été 76 °F\rb,2026-10-02,\r")]
    [InlineData("\"bake_id\",\"baked_on\",\"notes\"\n\"a\",\"2026-10-01\",\"été 76 °F\"\nb,2026-10-02,")]
    public void Byte_order_mark_and_line_ends_do_not_matter(string text)
    {
        var journal = Csv.ReadText(text);

        Assert.Empty(journal.Notices);
        Assert.Equal(["a", "b"], journal.Bakes.Select(bake => bake.Id));
        Assert.Equal("été 76 °F", journal.Bakes[0][BakeColumns.Notes]);
        Assert.Equal([2, 3], journal.Bakes.Select(bake => bake.Origin.Line));
    }

    [Fact]
    public void Header_alone_is_a_journal_with_no_bakes()
    {
        var journal = Csv.ReadText("bake_id,baked_on");

        Assert.Equal((0, 0, 0), (journal.Rows, journal.Bakes.Count, journal.Notices.Count));
    }

    [Fact]
    public void Reading_leaves_the_file_as_it_was()
    {
        var file = _folder.Write("bakes.csv", "bake_id,baked_on\na,soon\n");

        Journal.Read(file);

        Assert.Equal("bake_id,baked_on\na,soon\n", File.ReadAllText(file));
    }
}
