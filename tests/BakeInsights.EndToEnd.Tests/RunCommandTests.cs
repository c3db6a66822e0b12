using BakeInsights.TestKit;
using Xunit;
using static BakeInsights.TestKit.NotebookText;

namespace BakeInsights.EndToEnd.Tests;

public sealed class RunCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task A_run_writes_the_page_here_and_says_where()
    {
        Directory.CreateDirectory(_folder.File("books"));
        _folder.Write("books/review.ipynb", Of(Words("# Review"), Code("Console.Write(6 * 7);")));
        var run = await Run("books/review.ipynb");
        Assert.Equal((0, "review.html\n", ""), (run.ExitCode, run.Output, run.Errors));
        Assert.Contains("<pre>42</pre>", await File.ReadAllTextAsync(_folder.File("review.html")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Settings_reach_the_notebook_and_a_journal_is_meant_from_here()
    {
        Directory.CreateDirectory(_folder.File("books"));
        Directory.CreateDirectory(_folder.File("diary"));
        _folder.Write("books/n.ipynb", Of(
            Code("var journal = \"\"; var units = \"metric\"; var month = \"\"; var bakes = 1;", "bake-settings"),
            Code("Console.Write($\"{System.IO.Directory.Exists(journal)} {units} {month} {bakes + 1}\");")));
        var run = await Run("books/n.ipynb", "--journal", "diary", "--units", "us", "--set", "month=2026-03", "--set", "bakes=4");
        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        Assert.Contains("<pre>True us 2026-03 5</pre>", await File.ReadAllTextAsync(_folder.File("n.html")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(".html")]
    [InlineData(".ipynb")]
    public async Task With_names_hidden_neither_a_baker_nor_the_place_of_the_journal_is_on_the_page(string extension)
    {
        Directory.CreateDirectory(_folder.File("anselma"));
        File.Copy(Repository.Path("data-demo/millpond-lane/bakes.csv"), _folder.File("anselma/bakes.csv"));
        var names = (await File.ReadAllLinesAsync(_folder.File("anselma/bakes.csv"))).Skip(1).Select(line => line.Split(',')[2]).Distinct().ToList();
        Assert.Contains("Anselma", names);
        var target = _folder.File("page" + extension);

        var run = await Run(Repository.Path("notebooks/review-a-month.ipynb"), "--journal", "anselma", "--hide-names", "--to", target);

        Assert.Equal((0, ""), (run.ExitCode, run.Errors));
        var page = await File.ReadAllTextAsync(target);
        Assert.DoesNotMatch($@"(?i)\b({string.Join('|', names)})\b", page);
        Assert.Contains("baker A", page, StringComparison.Ordinal);
        Assert.Contains("(not shown)", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Hiding_names_in_a_notebook_that_knows_no_such_setting_is_refused()
    {
        _folder.Write("n.ipynb", Of(Code("var journal = \"\";", "bake-settings")));
        await AssertRefused("The notebook has no setting hideNames: it has journal.", "n.ipynb", "--hide-names");
    }

    [Fact]
    public async Task A_failing_cell_leaves_a_page_that_shows_it_and_status_2()
    {
        _folder.Write("n.ipynb", Of(Code("// Fit\nthrow new Exception(\"no bakes\");")));
        var run = await Run("n.ipynb", "--to", "out.html");
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Equal("Cell 1 (Fit) failed: Exception: no bakes. See it in place in out.html.", Assert.Single(run.ErrorLines));
        Assert.Contains("Code cell 1 failed: Fit", await File.ReadAllTextAsync(_folder.File("out.html")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_run_that_failed_is_a_valid_notebook_with_the_error_in_place()
    {
        _folder.Write("n.ipynb", Of(Code("Console.Write(1);"), Code("throw new Exception(\"no\\nbakes\");"), Words("w"), Code("2")));
        var run = await Run("n.ipynb", "--to", "out.ipynb");
        Assert.Equal(2, run.ExitCode);
        await JupyterFixture.AssertValidAsync(_folder.File("out.ipynb"));
        var cells = System.Text.Json.Nodes.JsonNode.Parse(await File.ReadAllTextAsync(_folder.File("out.ipynb")))!["cells"]!.AsArray();
        Assert.Equal("error", (string?)cells[1]!["outputs"]![0]!["output_type"]);
        Assert.Null(cells[3]!["execution_count"]);
        Assert.Empty(cells[3]!["outputs"]!.AsArray());
    }

    [Fact]
    public async Task On_a_terminal_a_line_names_the_cell_that_runs_and_is_wiped_at_the_end()
    {
        // script of util-linux runs a command on a terminal of its own.
        _folder.Write("n.ipynb", Of(Code("// Read\n1"), Code("// Fit\n2")));
        var command = string.Join(' ', BakeCommand.Line("run", "n.ipynb").Select(word => $"'{word}'"));
        var run = await Started.RunAsync("script", ["--quiet", "--return", "--command", command, "/dev/null"], _folder.Path);
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("Cell 1 of 2: Read", run.Output, StringComparison.Ordinal);
        Assert.Contains("Cell 2 of 2: Fit", run.Output, StringComparison.Ordinal);
        Assert.EndsWith("\r\u001b[Kn.html\n", run.Output.Replace("\r\n", "\n", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_cell_without_end_is_given_up_at_the_time_limit_and_nothing_is_written()
    {
        _folder.Write("n.ipynb", Of(Code("// Turn in circles\nwhile (true) { }")));
        var run = await Run("n.ipynb", "--time-limit", "0.1");
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Matches(
            @"^Stopped at the time limit of 0\.1 min, (in cell 1 of 1 \(Turn in circles\)|before the first cell); nothing was written\. Give it more with --time-limit\.$",
            Assert.Single(run.ErrorLines));
        Assert.Equal([_folder.File("n.ipynb")], Directory.GetFiles(_folder.Path));
    }

    [Fact]
    public async Task Interrupted_it_ends_with_one_line_and_nothing_is_written()
    {
        _folder.Write("n.ipynb", Of(Code("// Turn in circles\nSystem.IO.File.WriteAllText(\"begun\", \"\"); while (true) { }")));

        // Whoever starts this may have the interrupt switched off, and programs inherit that.
        const string interrupt = "env --default-signal=INT \"$@\" & program=$!; while [ ! -e begun ]; do sleep 0.1; done; kill -INT $program; wait $program";
        var run = await Started.RunAsync("sh", ["-c", interrupt, "sh", .. BakeCommand.Line("run", "n.ipynb")], _folder.Path);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Equal("Stopped in cell 1 of 1 (Turn in circles); nothing was written.", Assert.Single(run.ErrorLines));
        Assert.Equal(["begun", "n.ipynb"], Directory.GetFiles(_folder.Path).Select(Path.GetFileName).Order());
    }

    [Theory]
    [InlineData("de_DE.UTF-8")]
    [InlineData("tr_TR.UTF-8")]
    public async Task A_page_has_the_same_bytes_in_another_language(string locale)
    {
        // Without the package, which settles the culture too.
        _folder.Write("n.ipynb", Of(Code("Console.WriteLine($\"{1234.5:N1} {\"i\".ToUpper()} {new DateTime(2026, 3, 1):d}\"); 0.25")));
        await Run("n.ipynb", "--to", "a.html");
        var run = await BakeCommand.RunAsAsync(locale, _folder.Path, "run", "n.ipynb", "--to", "b.html");
        Assert.Equal(0, run.ExitCode);
        Assert.Equal(await File.ReadAllTextAsync(_folder.File("a.html")), await File.ReadAllTextAsync(_folder.File("b.html")));
    }

    [Fact]
    public async Task The_notebook_itself_is_never_written_over()
    {
        var path = _folder.Write("n.ipynb", Of(Code("1")));
        var before = await File.ReadAllTextAsync(path);
        await AssertRefused("is the notebook itself", "n.ipynb", "--to", "./n.ipynb");
        Assert.Equal(before, await File.ReadAllTextAsync(path));
    }

    [Fact]
    public async Task Another_ending_is_refused_a_journals_file_above_all()
    {
        _folder.Write("n.ipynb", Of(Code("1")));
        var journal = _folder.Write("bakes.csv", "baked_on\n");
        await AssertRefused("ends in .html or .ipynb", "n.ipynb", "--to", "bakes.csv");
        Assert.Equal("baked_on\n", await File.ReadAllTextAsync(journal));
    }

    [Theory]
    [InlineData("There is no notebook", "missing.ipynb")]
    [InlineData("is no notebook", "text.ipynb")]
    [InlineData("has no setting year: it has journal", "n.ipynb", "--set", "year=1")]
    [InlineData("write --set name=value", "n.ipynb", "--set", "journal")]
    [InlineData("given twice", "n.ipynb", "--journal", ".", "--set", "journal=.")]
    [InlineData("There is no journal nowhere", "n.ipynb", "--journal", "nowhere")]
    [InlineData("say metric or us", "n.ipynb", "--units", "stones")]
    [InlineData("give minutes as a number above 0", "n.ipynb", "--time-limit", "0")]
    [InlineData("give minutes as a number above 0", "n.ipynb", "--time-limit", "long")]
    [InlineData("There is no folder", "n.ipynb", "--to", "no/such/page.html")]
    [InlineData("unknown", "n.ipynb", "--unknown")]
    [InlineData("notebook")]
    [InlineData("--to has no value", "n.ipynb", "--to")]
    [InlineData("--set has no value", "--set", "--to", "page.html", "n.ipynb")]
    [InlineData("extra", "n.ipynb", "extra")]
    public async Task What_can_not_be_done_ends_with_status_2_and_one_line(string said, params string[] arguments)
    {
        _folder.Write("n.ipynb", Of(Code("var journal = \"\"; var units = \"\";", "bake-settings")));
        _folder.Write("text.ipynb", "bread");
        await AssertRefused(said, arguments);
        Assert.Equal(2, Directory.GetFiles(_folder.Path).Length);
    }

    [Fact]
    public async Task An_unknown_command_ends_with_status_2_and_one_line()
    {
        var run = await BakeCommand.RunAsync(_folder.Path, "knead");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("knead", Assert.Single(run.ErrorLines), StringComparison.Ordinal);
    }

    private Task<Started> Run(params string[] arguments) => BakeCommand.RunAsync(_folder.Path, ["run", .. arguments]);

    private async Task AssertRefused(string said, params string[] arguments)
    {
        var run = await Run(arguments);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains(said, Assert.Single(run.ErrorLines), StringComparison.OrdinalIgnoreCase);
    }
}
