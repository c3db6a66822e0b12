using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.EndToEnd.Tests;

/// <summary>The notebooks that have to work in every place: our own small one, and all that the toolkit brings.</summary>
public static class Notebooks
{
    /// <summary>The test notebook: two charts, text, a table, HTML and JavaScript.</summary>
    public const string Small = "tests/BakeInsights.EndToEnd.Tests/notebooks/small.ipynb";

    /// <summary>The review of a month, of the demo journal of Millpond Lane.</summary>
    public const string Month = "notebooks/review-a-month.ipynb";

    /// <summary>Their paths from the root of the checkout.</summary>
    public static TheoryData<string> All() =>
        [Small, .. Directory.GetFiles(Repository.Path("notebooks"), "*.ipynb").Order().Select(file => "notebooks/" + Path.GetFileName(file))];
}
