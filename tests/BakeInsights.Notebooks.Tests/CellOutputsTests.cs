using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.Events;
using Microsoft.DotNet.Interactive.Formatting;
using Xunit;

namespace BakeInsights.Notebooks.Tests;

public class CellOutputsTests
{
    private static readonly SubmitCode Cell = new("x");

    [Fact]
    public void An_updated_value_stands_where_it_was_first_shown() =>
        Assert.Equal(
            ["two", "between"],
            Texts(new DisplayedValueProduced("one", Cell, Plain("one"), "id"),
                new DisplayedValueProduced("between", Cell, Plain("between"), "other"),
                new DisplayedValueUpdated("two", "id", Cell, Plain("two"))));

    [Fact]
    public void An_update_of_something_never_shown_is_passed_over() =>
        Assert.Empty(Texts(new DisplayedValueUpdated("two", "id", Cell, Plain("two"))));

    [Fact]
    public void Printed_pieces_of_one_stream_become_one_text() =>
        Assert.Equal(
            [new PrintedText("stdout", "a\nb"), new PrintedText("stderr", "c"), new PrintedText("stdout", "d")],
            CellOutputs.From(
            [
                new StandardOutputValueProduced(Cell, Plain("a\r\n")),
                new StandardOutputValueProduced(Cell, Plain("b")),
                new StandardErrorValueProduced(Cell, Plain("c")),
                new StandardOutputValueProduced(Cell, Plain("d")),
            ]).ToArray());

    [Fact]
    public void An_error_says_its_causes_and_no_file_names()
    {
        var error = new InvalidOperationException("outer", new FormatException("inner"));
        var shown = Assert.IsType<CellError>(Assert.Single(CellOutputs.From([new CommandFailed(error, Cell, "x", null)])));
        Assert.Equal(new CellError("InvalidOperationException", "InvalidOperationException: outer\nFormatException: inner"), shown);
    }

    private static IEnumerable<string> Texts(params KernelEvent[] events) =>
        CellOutputs.From(events).Select(output => ((ShownValue)output).Forms[0].Value);

    private static FormattedValue[] Plain(string text) => [new("text/plain", text)];
}
