using BakeInsights.Reports;
using BakeInsights.TestKit;
using Xunit;
using static BakeInsights.TestKit.NotebookText;

namespace BakeInsights.Notebooks.Tests;

public sealed class RunProvenanceTests : IDisposable
{
    // By sha256sum of GNU coreutils 9.1, of the text below.
    private const string OneBake = "baked_on\n2026-10-01\n";
    private const string HashOfOneBake = "9e20c28485dcbedc0cac64dbdb1e81d83bc89f4b053ce45c072b36670fb4f6d9";

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_journals_file_is_named_by_its_hash_with_what_was_set_aside()
    {
        Directory.CreateDirectory(_folder.File("diary"));
        var content = "bake_id,baked_on\nA,2026-10-01\nB,never\n";
        _folder.Write("diary/bakes.csv", content);
        var facts = Facts("var journal = \"diary\"; var seed = 7; var units = \"us\"; var month = \"\";");
        var hash = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(content)));
        Assert.Equal(new PageFact("Journal, bakes.csv", $"2 rows read, 1 row set aside; SHA-256 {hash}"), facts[0]);
        Assert.Equal(new PageFact("Remarks on it", "1 refused"), facts[1]);
        Assert.Equal(new PageFact("Settings", "seed = 7; units = us; month = (empty)"), facts[2]);
        Assert.Matches(@"^BakeInsights \d+\.\d+\.\d+, \.NET \d+\.\d+\.\d+, plotly\.js \d+\.\d+\.\d+$", facts[3].Value);
    }

    [Fact]
    public void The_hash_is_sha_256_of_the_files_bytes()
    {
        _folder.Write("one.csv", OneBake);
        Assert.Contains(Facts("var journal = \"one.csv\";"), fact => fact.Value.EndsWith(HashOfOneBake, StringComparison.Ordinal));
    }

    [Fact]
    public void With_names_hidden_no_file_is_named()
    {
        _folder.Write("anselma.csv", "bake_id,baked_on,baker\nA,2026-10-01,Anselma\n");
        var facts = Facts("var journal = \"anselma.csv\"; bool hideNames = true;");
        Assert.Equal("Journal, file 1", facts[0].Name);
        Assert.DoesNotContain(facts, fact => fact.ToString().Contains("anselma", StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [InlineData("var journal = \"nowhere\";")]
    [InlineData("var journal = \"\";")]
    [InlineData("var units = \"us\";")]
    public void Without_a_journal_that_can_be_read_the_rest_is_said(string settings) =>
        Assert.Equal("Made by", Facts(settings)[^1].Name);

    private IReadOnlyList<PageFact> Facts(string settings) => RunProvenance.Of(
        NotebookDocument.Parse(Of(Code(settings, NotebookSettings.CellTag)), "x"), _folder.Path);
}
