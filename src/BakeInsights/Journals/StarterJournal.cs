using System.Text;
using C = BakeInsights.BakeColumns;

namespace BakeInsights;

/// <summary>The files of a journal with no bakes in it yet.</summary>
public static class StarterJournal
{
    /// <summary>The name of the file of bakes.</summary>
    public const string BakesFile = "bakes.csv";

    private static readonly IReadOnlyList<JournalColumn> Columns =
    [
        C.Id, C.BakedOn, C.Baker, C.Formula, C.Flour, C.FlourMeasure, C.Water, C.Salt, C.Yeast, C.YeastKind, C.RoomTemp,
        C.FlourTemp, C.WaterTemp, C.DoughTemp, C.Rise, C.RiseNotReady, C.RiseOutcome, C.Proof, C.OvenTemp, C.Baking, C.Dough,
        C.LoafCount, C.Loaf, C.LoafVolume, C.CrumbScore, C.Notes,
    ];

    /// <summary>The files: a header to write bakes under, a page that explains its columns, and their description for programs.</summary>
    public static IReadOnlyList<(string Name, string Text)> Files { get; } =
    [
        (BakesFile, string.Join(',', Columns.Select(column => column.Name)) + "\n"),
        ("README.md", Explanation()),
        (TableMetadata.FileName, TableMetadata.Of(BakesFile, Columns)),
    ];

    private static string Explanation()
    {
        var text = new StringBuilder();
        text.Append("# A bake journal\n\n");
        text.Append($"Write one line in `{BakesFile}` for each dough, in any spreadsheet or text editor; save it as CSV with commas.\n");
        text.Append($"Only `{C.BakedOn}` is needed. Leave a cell empty when you don't know: an empty cell is missing, never zero.\n\n");
        text.Append("Numbers have a decimal point. A column may end in another unit (`dough_temp_f`, `flour_oz`, `flour_cups`,\n");
        text.Append("`rise_h`), and a cell may carry its own (`76 F`, `19 oz`). Columns of your own are kept. Columns that are\n");
        text.Append("not in the header yet can be added; all that have a meaning are listed below.\n\n");
        text.Append($"`{TableMetadata.FileName}` describes the columns of the header for other programs (W3C, CSV on the Web). Who\n");
        text.Append("changes the header changes it too, or deletes it: nothing here needs it.\n\n");
        text.Append("| column | meaning | range or words |\n|---|---|---|\n");
        foreach (var column in C.All)
        {
            text.Append($"| `{column}` | {column.Meaning} | {Accepted(column)} |\n");
        }

        return text.ToString();
    }

    private static string Accepted(JournalColumn column) => column switch
    {
        QuantityColumn { Dimension: Dimension.TimeOfDay } => "00:00 to 23:59",
        QuantityColumn quantity => FormattableString.Invariant($"{quantity.Low} to {quantity.High}"),
        ChoiceColumn choice => string.Join(", ", choice.Values),
        _ => "text",
    };
}
