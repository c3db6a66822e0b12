using System.Text;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Cli.Tests;

/// <summary>What can't be done ends with status 2 and one line on standard error that says why and what to do.</summary>
[Collection(nameof(Command))]
public sealed class RefusalTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public static TheoryData<string, string> Arguments => new()
    {
        { "frob", "Unknown command 'frob'. See bakeinsights --help." },
        { "check --frob x", "Unknown option 'frob'. See bakeinsights --help." },
        { "fit j --json --frob", "Unknown option 'frob'. See bakeinsights --help." },
        { "check", "Command 'check' is missing required argument 'journal'. See bakeinsights --help." },
        { "fit --json", "Command 'fit' is missing required argument 'journal'. See bakeinsights --help." },
        { "new", "Command 'new' is missing required argument 'folder'. See bakeinsights --help." },
        { "check one two", "Could not match 'two' with an argument. See bakeinsights --help." },
        { "fit j --units furlongs", "There are no units furlongs: say metric or us." },
        { "fit j --units 1", "There are no units 1: say metric or us." },
        { "fit j --units", "--units has no value: write one after it." },
        { "check j --to", "--to has no value: write one after it." },
    };

    public static TheoryData<string, string, string> BadFiles => new()
    {
        { "empty.csv", "", "The file is empty. It needs a header line and a line for each bake." },
        { "binary.csv", "\u0089PNG\0\u0001", "The file holds bytes that are not text in UTF-8. Save the table as CSV (UTF-8) and read that." },
        { "book.csv", "PK\u0003\u0004more", "This is a workbook or an archive, not a CSV file. Save the sheet as CSV (UTF-8) and read that." },
        {
            "semicolon.csv",
            "bake_id;baked_on\nA;2026-10-01\n",
            "The cells are separated by ';', not by a comma. Save the table as CSV with commas."
        },
        { "tab.csv", "bake_id\tbaked_on\nA\t2026-10-01\n", "The cells are separated by a tab, not by a comma. Save the table as CSV with commas." },
        {
            "other.csv",
            "name,age\nA,3\n",
            "The first line has no column baked_on, so it is not the header of a table of bakes. "
            + "Start the file with a line of column names; 'bakeinsights new' writes one to copy."
        },
    };

    public void Dispose() => _folder.Dispose();

    [Theory]
    [MemberData(nameof(Arguments))]
    public void Bad_arguments_are_refused_in_one_line(string arguments, string line) =>
        Command.Run(arguments.Split(' ')).Refuses(line);

    [Theory]
    [MemberData(nameof(BadFiles))]
    public void A_file_that_is_no_journal_is_refused_in_one_line(string name, string content, string reason)
    {
        var file = _folder.File(name);
        File.WriteAllBytes(file, Encoding.Latin1.GetBytes(content));
        Command.Run("check", file).Refuses($"{file}: {reason}");
        Command.Run("fit", file, "--json").Refuses($"{file}: {reason}");
    }

    [Fact]
    public void A_journal_that_is_not_there_is_refused_in_one_line()
    {
        const string line = "nowhere: There is no such file or folder. Check the spelling, or start a journal with 'bakeinsights new'.";
        Command.Run("check", "nowhere").Refuses(line);
        Command.Run("fit", "nowhere").Refuses(line);
        Command.Run("check", _folder.Path)
            .Refuses($"{_folder.Path}: The folder has no bakes*.csv in it. Name the folder of a journal, or one CSV file of bakes.");
    }

    [Fact]
    public void A_blank_name_is_refused_in_one_line()
    {
        Command.Run("check", "").Refuses("The journal's name is blank: give a folder, or a CSV file of bakes.");
        Command.Run("fit", " ").Refuses("The journal's name is blank: give a folder, or a CSV file of bakes.");
        Command.Run("new", "").Refuses("The folder's name is blank: give one to make the journal in.");
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void Refusals_are_the_same_in_every_culture(string culture) =>
        Command.RunUnder(culture, "fit", "j", "--units", "furlongs").Refuses("There are no units furlongs: say metric or us.");
}
