using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using BakeInsights.TestKit;
using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>
/// The description of the columns against the rules of W3C, "Metadata Vocabulary for Tabular Data" (Recommendation of
/// 17 December 2015), by section.
/// </summary>
public class TableMetadataTests
{
    // Section 5.11.1, as far as a bake could use them; "number" stands for double.
    private static readonly string[] Datatypes = ["string", "number", "date"];

    private static readonly JsonObject All = Parse(TableMetadata.Of("bakes.csv", BakeColumns.All));

    private static IEnumerable<JsonObject> Columns => ColumnsOf(All);

    // Section 5.2: the namespace, alone or in an array of two whose second gives language and base alone.
    [Fact]
    public void Context_is_the_vocabularys() => Assert.Equal(
        """["http://www.w3.org/ns/csvw",{"@language":"en"}]""", All["@context"]!.ToJsonString());

    // Section 5.4: a table has a url and a schema; 2.2: other keys have a prefix of the vocabulary.
    [Fact]
    public void Table_has_what_a_table_has_and_nothing_unknown()
    {
        Assert.Equal(["@context", "url", "dc:title", "tableSchema"], All.Select(pair => pair.Key));
        Assert.Equal("bakes.csv", (string?)All["url"]);
        Assert.Equal(["columns"], All["tableSchema"]!.AsObject().Select(pair => pair.Key));
    }

    // Section 5.6: names are unique, are variable names of RFC 6570, and don't begin with an underline.
    [Fact]
    public void Columns_have_names_titles_and_a_meaning()
    {
        Assert.Equal(BakeColumns.All.Select(column => column.Name), Columns.Select(column => (string?)column["name"]));
        Assert.Equal(Columns.Count(), Columns.Select(column => (string?)column["name"]).Distinct().Count());
        Assert.All(Columns, column =>
        {
            Assert.Equal(["name", "titles", "dc:description", "datatype", "required"], column.Select(pair => pair.Key));
            Assert.Matches("^[A-Za-z0-9][A-Za-z0-9_]*$", (string?)column["name"]);
            Assert.Equal((string?)column["name"], (string?)column["titles"]);
            Assert.NotEmpty((string)column["dc:description"]!);
            Assert.Equal((string?)column["name"] == "baked_on", (bool)column["required"]!);
        });
    }

    // Section 5.11.2: base is a built-in type; bounds go with numbers; format is a pattern of the type.
    [Fact]
    public void Datatypes_are_built_in_ones_with_bounds_or_a_pattern() => Assert.All(Columns, column =>
    {
        if (column["datatype"] is JsonValue plain)
        {
            Assert.Equal("string", (string?)plain);
            return;
        }

        var type = column["datatype"]!.AsObject();
        Assert.Contains((string?)type["base"], Datatypes);
        switch ((string?)type["base"])
        {
            case "number":
                Assert.True((double)type["minimum"]! < (double)type["maximum"]!);
                break;
            case "date":
                Assert.Equal("yyyy-MM-dd", (string?)type["format"]);
                break;
            default:
                Assert.NotNull(new Regex((string)type["format"]!, RegexOptions.ECMAScript));
                break;
        }
    });

    [Theory]
    [InlineData("yeast_kind", """{"base":"string","format":"^(fresh|active_dry|instant)$"}""")]
    [InlineData("dough_temp_c", """{"base":"number","minimum":0,"maximum":50}""")]
    [InlineData("baked_on", """{"base":"date","format":"yyyy-MM-dd"}""")]
    [InlineData("mixed_at", """{"base":"string","format":"^([01][0-9]|2[0-3]):[0-5][0-9](:[0-5][0-9])?$"}""")]
    [InlineData("notes", "\"string\"")]
    public void Column_is_described_as_the_reader_takes_it(string name, string datatype)
    {
        var type = Columns.Single(column => (string?)column["name"] == name)["datatype"]!;

        Assert.Equal(datatype, type.ToJsonString(new() { Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping }));
    }

    // A small validator after section 4.6 and 6.4 of the model: what the toolkit writes keeps to its own description.
    [Fact]
    public void Every_cell_of_the_canonical_form_keeps_to_the_description() => RandomBakes.Any.Sample(bakes =>
    {
        using var folder = new TemporaryFolder();
        using var csv = CsvHelper.CsvReader.FromFile(folder.Write("bakes.csv", Csv.Canonical(bakes)));
        csv.ReadHeader();
        while (csv.Read())
        {
            foreach (var column in Columns.Where(column => csv.Headers.Contains((string)column["name"]!)))
            {
                AssertValid(column, csv.GetString((string)column["name"]!));
            }
        }
    });

    [Fact]
    public void New_journal_is_described_column_by_column()
    {
        var files = StarterJournal.Files.ToDictionary(file => file.Name, file => file.Text);
        var described = Parse(files["csv-metadata.json"]);

        Assert.Equal(StarterJournal.BakesFile, (string?)described["url"]);
        Assert.Equal(
            files[StarterJournal.BakesFile].TrimEnd().Split(','), ColumnsOf(described).Select(column => (string)column["titles"]!));
        Assert.All(ColumnsOf(described), column => Assert.Contains(Columns, each => JsonNode.DeepEquals(each, column)));
    }

    [Fact]
    public void The_page_in_the_documentation_is_the_description() =>
        Approved.Matches("docs/csv-metadata.json", TableMetadata.Of("bakes.csv", BakeColumns.All));

    private static void AssertValid(JsonObject column, string cell)
    {
        if (cell.Length == 0)
        {
            Assert.False((bool)column["required"]!);
        }
        else if (column["datatype"] is JsonObject type)
        {
            switch ((string?)type["base"])
            {
                case "number":
                    Assert.InRange(double.Parse(cell, CultureInfo.InvariantCulture), (double)type["minimum"]!, (double)type["maximum"]!);
                    break;
                case "date":
                    Assert.True(DateOnly.TryParseExact(cell, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _));
                    break;
                default:
                    Assert.Matches(new Regex((string)type["format"]!, RegexOptions.ECMAScript), cell);
                    break;
            }
        }
    }

    private static JsonObject Parse(string text) => JsonNode.Parse(text)!.AsObject();

    private static IEnumerable<JsonObject> ColumnsOf(JsonObject table) =>
        table["tableSchema"]!["columns"]!.AsArray().Select(column => column!.AsObject());
}
