using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Xml.Linq;
using BakeInsights.Reports;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Cli.Tests;

/// <summary>The page of everything that ships and is not ours is written from what the command is built of.</summary>
public class ThirdPartyPageTests
{
    // Packages that name no licence but hold or point to its text, with the words by which that text is known.
    private static readonly Dictionary<string, (string Licence, string Words)> ByText = new(StringComparer.Ordinal)
    {
        ["Apache.Arrow"] = ("Apache-2.0", "Apache License"),
        ["Fable.Core"] = ("MIT", "The MIT License"),
        ["Microsoft.AspNetCore.Html.Abstractions"] = ("Apache-2.0", "https://raw.githubusercontent.com/aspnet/AspNetCore/2.0.0/LICENSE.txt"),
    };

    [Fact]
    public void The_page_names_the_licence_of_every_package_that_ships_and_of_the_charts_script()
    {
        var page = new StringBuilder(
            """
            # What ships and is not ours

            BakeInsights is under the MIT licence (`LICENSE`). The packages beside the command keep their own; each package
            holds or points to its text. Written by a test from what the command is built of.

            | package | version | licence |
            |---|---|---|

            """);
        foreach (var (name, version) in Shipped())
        {
            page.Append(CultureInfo.InvariantCulture, $"| {name} | {version} | {LicenceOf(name, version)} |\n");
        }

        page.Append(CultureInfo.InvariantCulture, $"\nEvery page that `run` writes holds the script that draws its charts: {Script()}.\n");
        Approved.Matches("docs/third-party.md", page.ToString());
    }

    private static IEnumerable<(string Name, string Version)> Shipped()
    {
        using var built = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "BakeInsights.Cli.deps.json")));
        foreach (var library in built.RootElement.GetProperty("libraries").EnumerateObject())
        {
            if (library.Value.GetProperty("type").GetString() == "package")
            {
                var parts = library.Name.Split('/');
                yield return (parts[0], parts[1]);
            }
        }
    }

    private static string LicenceOf(string name, string version)
    {
        var folder = Path.Combine(PackageFolder(), name.ToLowerInvariant(), version);
        var data = XDocument.Load(Path.Combine(folder, name.ToLowerInvariant() + ".nuspec")).Root!.Elements().Single(part => part.Name.LocalName == "metadata");
        var licence = data.Elements().FirstOrDefault(part => part.Name.LocalName == "license");
        if (licence?.Attribute("type")?.Value == "expression")
        {
            return licence.Value;
        }

        var text = licence is null
            ? data.Elements().Single(part => part.Name.LocalName == "licenseUrl").Value
            : File.ReadAllText(Path.Combine(folder, licence.Value));
        Assert.True(ByText.TryGetValue(name, out var known), $"{name} names no licence: read its text, and enter what it is.");
        Assert.Contains(known.Words, text, StringComparison.Ordinal);
        return known.Licence;
    }

    private static string PackageFolder()
    {
        using var assets = JsonDocument.Parse(File.ReadAllBytes(Repository.Path("src/BakeInsights.Cli/obj/project.assets.json")));
        return assets.RootElement.GetProperty("packageFolders").EnumerateObject().First().Name;
    }

    // The script begins with its name, version, owner and licence.
    private static string Script()
    {
        var banner = PlotlyScript.Text.Split("/**", 2)[1].Split("*/", 2)[0].Split('\n').Select(line => line.Trim(' ', '*')).Where(line => line.Length > 0).ToList();
        Assert.Contains("Licensed under the MIT license", banner);
        return $"{banner[0]}, MIT";
    }
}
