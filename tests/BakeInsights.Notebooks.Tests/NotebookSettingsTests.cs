using BakeInsights.TestKit;
using Microsoft.CodeAnalysis.CSharp.Scripting;
using Xunit;

namespace BakeInsights.Notebooks.Tests;

public class NotebookSettingsTests
{
    private const string Settings = """
        // Settings
        var journal = "../data-demo/school";   // a folder
        string month = "";
        var bakes = 6;
        double target = 26;
        var hydration = 65.0;
        decimal price = 2;
        bool hideNames = false;
        string? baker = null;
        var offset = -2;
        var derived = journal + "/x";
        """;

    [Fact]
    public void Names_are_those_of_variables_with_a_plain_value() =>
        Assert.Equal(
            ["journal", "month", "bakes", "target", "hydration", "price", "hideNames", "baker", "offset"],
            NotebookSettings.Names(Notebook(Settings)).ToArray());

    [Theory]
    [InlineData("plain")]
    [InlineData("C:\\bakes\\new")]
    [InlineData("she said \"more water\"")]
    [InlineData("two\nlines\tand a tab")]
    [InlineData("\"; System.IO.File.Delete(\"x\"); //")]
    [InlineData("{braces} and {{more}} ü 🍞 \u2028")]
    [InlineData("")]
    public async Task Text_reaches_the_notebook_as_it_was_given(string value) =>
        Assert.Equal(value, await ValueOf("journal", value));

    [Theory]
    [InlineData("bakes", "12", 12)]
    [InlineData("bakes", "-3", -3)]
    [InlineData("target", "24.5", 24.5)]
    [InlineData("hydration", "70", 70.0)]
    [InlineData("hideNames", "True", true)]
    [InlineData("baker", "Ada", "Ada")]
    [InlineData("offset", "4", 4)]
    public async Task A_value_keeps_the_type_that_the_notebook_gave_it(string name, string value, object expected) =>
        Assert.Equal(expected, await ValueOf(name, value));

    [Fact]
    public async Task A_decimal_takes_a_fraction() => Assert.Equal(2.5m, await ValueOf("price", "2.5"));

    [Fact]
    public void Several_settings_change_at_once_and_the_rest_of_the_cell_stays()
    {
        var changed = NotebookSettings.Apply(
            Notebook(Settings), new Dictionary<string, string> { ["journal"] = "a", ["bakes"] = "10000" });
        Assert.Equal(
            Settings.Replace("\"../data-demo/school\"", "\"a\"").Replace("= 6;", "= 10000;"),
            changed.Cells[0].Source);
    }

    [Fact]
    public void An_unknown_name_is_refused_with_the_names_there_are()
    {
        var error = Assert.Throws<NotebookException>(() => Apply(Notebook("var journal = \"\"; var month = \"\";"), "year", "3"));
        Assert.Equal("The notebook has no setting year: it has journal, month.", error.Message);
    }

    [Fact]
    public void A_notebook_without_settings_takes_none()
    {
        var notebook = NotebookDocument.Parse(NotebookText.Of(NotebookText.Code("var journal = \"\";")), "x");
        var error = Assert.Throws<NotebookException>(() => Apply(notebook, "journal", "a"));
        Assert.Contains("no settings", error.Message, StringComparison.Ordinal);
        Assert.Same(notebook, NotebookSettings.Apply(notebook, new Dictionary<string, string>()));
    }

    [Theory]
    [InlineData("bakes", "many", "whole number")]
    [InlineData("bakes", "2.5", "whole number")]
    [InlineData("target", "24,5", "number with a point")]
    [InlineData("hideNames", "perhaps", "true or false")]
    public void A_value_that_does_not_fit_is_refused_by_name(string name, string value, string wanted)
    {
        var error = Assert.Throws<NotebookException>(() => Apply(Notebook(Settings), name, value));
        Assert.StartsWith($"{name}={value}", error.Message, StringComparison.Ordinal);
        Assert.Contains(wanted, error.Message, StringComparison.Ordinal);
    }

    private static NotebookDocument Notebook(string settings) =>
        NotebookDocument.Parse(NotebookText.Of(NotebookText.Code(settings, NotebookSettings.CellTag)), "test");

    private static NotebookDocument Apply(NotebookDocument notebook, string name, string value) =>
        NotebookSettings.Apply(notebook, new Dictionary<string, string> { [name] = value });

    // The compiler is the judge of what the cell now says.
    private static async Task<object?> ValueOf(string name, string value)
    {
        var source = Apply(Notebook(Settings), name, value).Cells[0].Source;
        var state = await CSharpScript.RunAsync("#nullable enable\n" + source);
        return state.GetVariable(name).Value;
    }
}
