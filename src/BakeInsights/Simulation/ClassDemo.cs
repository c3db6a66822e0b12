using System.Globalization;

namespace BakeInsights;

/// <summary>
/// Writes the journal of an invented class in two months, September and October 2026: three benches, six bakers, some
/// flour by the cup, and three judges.
/// </summary>
public static class ClassDemo
{
    private const int Months = 2;
    private const int BakesInMonth = 36;

    /// <summary>The class: its kitchen, its people, its habits. Names are invented, figures our own choice.</summary>
    public static VirtualKitchen Kitchen { get; } = new()
    {
        FirstDay = new DateOnly(2026, 9, 1),
        IdPrefix = "OY-",
        Practice = new DoughPractice
        {
            FlourG = new(900, 1_300),
            YeastKind = YeastKind.ActiveDry,
            YeastPct = new(0.8, 1.5),
            UsesIce = false,
        },
        Hands = new KitchenHands
        {
            Bakers = ["Brannoc", "Sunniva", "Yorath", "Wenna", "Tobiah", "Ilsebet"],
            Benches = ["window bench", "middle bench", "door bench"],
        },
        Panel = new TastingPanel { Judges = ["Corvin", "Hesper", "Odalys"] },
        Habits = new JournalHabits
        {
            ShareLookedAt = 0.6,
            ShareProofLookedAt = 0.5,
            StopAfterMin = 150,
            ShareByCup = 0.35,
            CupHandShare = 0.7,
            CupsWeighed = 5,
            ShareOverbaked = 0.02,
        },
    };

    /// <summary>The files of the journal's folder by name; the same seed gives the same bytes.</summary>
    public static IReadOnlyDictionary<string, string> Files(int seed)
    {
        var journal = Kitchen.Months(seed, Months, BakesInMonth);
        return new SortedDictionary<string, string>(StringComparer.Ordinal)
        {
            ["bakes.csv"] = Bakes(journal),
            ["loaves.csv"] = SideCsv.Of(journal.Loaves),
            ["attributes.csv"] = SideCsv.Of(journal.Attributes),
            ["scores.csv"] = SideCsv.Of(journal.Scores),
            ["cups.csv"] = SideCsv.Of(journal.Cups),
        };
    }

    private static string Bakes(Journal journal)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        CanonicalCsv.Write(text, journal.Bakes);
        return text.ToString();
    }
}
