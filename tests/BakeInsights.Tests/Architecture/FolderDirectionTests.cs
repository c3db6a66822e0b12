using Xunit;

namespace BakeInsights.Tests;

/// <summary>Each folder of the core library uses only those above it, and each library is known to one folder.</summary>
public class FolderDirectionTests
{
    private static readonly string[] Order =
    [
        "Quantities", "Doughs", "Fermentation", "Cautions", "Journals", "Tables", "Evidence", "Simulation", "Planning",
    ];

    [Fact]
    public void Library_compiles_for_this_check() => Assert.Empty(CoreUses.AsItStands.Errors);

    [Fact]
    public void No_folder_uses_one_below_it() => Assert.Empty(Breaches(CoreUses.AsItStands));

    [Fact]
    public void Every_source_file_is_in_a_folder_that_has_its_place() => Assert.All(
        Sources.Below("src/BakeInsights", ".cs"), path => Assert.Contains(path.Split('/')[2], Order));

    [Theory]
    [InlineData("UnitsNet", "Quantities")]
    [InlineData("CsvHelper", "Journals")]
    [InlineData("Microsoft.Data.Analysis", "Tables")]
    public void Library_is_known_to_one_folder(string library, string folder) => Assert.Equal(
        [folder], CoreUses.AsItStands.Uses.Where(use => use.Of == library).Select(use => use.Folder).Distinct());

    [Theory]
    [InlineData("MathNet.Numerics")]
    [InlineData("FSharp.Core")]
    public void Library_of_another_project_is_known_to_none(string library) =>
        Assert.DoesNotContain(CoreUses.AsItStands.Uses, use => use.Of == library);

    [Fact]
    public void Quantities_to_journals_know_nothing_of_statistics() => Assert.DoesNotContain(
        CoreUses.AsItStands.Uses,
        use => use.Of == "BakeInsights.Inference" && Array.IndexOf(Order, use.Folder) <= Array.IndexOf(Order, "Journals"));

    // The check itself: a type that goes by the name of a property too, one used without being named, and one that is
    // only spoken of.
    [Fact]
    public void Check_tells_a_type_from_a_property_of_its_name()
    {
        var uses = CoreUses.With(
            ("Journals/Named.cs", "namespace BakeInsights; static class Named { static object Of(Bake bake) => RiseTime.SaltTerm; }"),
            ("Journals/Hidden.cs", "namespace BakeInsights; static class Hidden { static object Of(Bake[] bakes) => bakes.ToDataFrame(); }"),
            ("Journals/Fine.cs", "namespace BakeInsights; static class Fine { /* Measures */ static object Of() => BakeColumns.LoafVolume + \"Measures\"; }"));

        Assert.Empty(uses.Errors);
        Assert.Equal(
            ["Journals/Hidden.cs uses BakeFrame of Tables", "Journals/Named.cs uses RiseTime of Evidence"], Breaches(uses));
    }

    private static IEnumerable<string> Breaches(CoreUses library) => library.Uses
        .Where(use => Array.IndexOf(Order, use.Of) > Array.IndexOf(Order, use.Folder))
        .Select(use => $"{use.File} uses {use.Type} of {use.Of}")
        .Order(StringComparer.Ordinal);
}
