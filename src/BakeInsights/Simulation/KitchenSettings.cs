namespace BakeInsights;

/// <summary>Refuses settings that no kitchen can have, before they become numbers that mean nothing.</summary>
internal static class KitchenSettings
{
    /// <summary>Checks the settings that later steps divide by, take the root of, or look up.</summary>
    public static void Require(VirtualKitchen kitchen)
    {
        var habits = kitchen.Habits;
        if (kitchen.Hands.Bakers.IsDefaultOrEmpty)
        {
            throw new ArgumentException("A kitchen has at least one baker.", nameof(kitchen));
        }

        if (habits.ShareByCup > 0 && habits.Filling == FlourMeasure.Weighed)
        {
            throw new ArgumentException("Flour by the cup is filled in some way: Filling can't be Weighed.", nameof(kitchen));
        }

        Require(habits.CupHandShare is >= 0 and <= 1, nameof(habits.CupHandShare), "goes from 0 to 1");
        Require(habits.LookEveryMin > 0, nameof(habits.LookEveryMin), "is more than 0");
        Require(habits.ProofLookEveryMin > 0, nameof(habits.ProofLookEveryMin), "is more than 0");
        Require(kitchen.Truth.RiseMinutesAtCentre > 0, nameof(kitchen.Truth.RiseMinutesAtCentre), "is more than 0");
        Require(kitchen.Oven.ProofMinutes > 0, nameof(kitchen.Oven.ProofMinutes), "is more than 0");
        Require(kitchen.Oven.PieceG > 0, nameof(kitchen.Oven.PieceG), "is more than 0");
        Require(kitchen.Practice.FlourG.Low > 0, nameof(kitchen.Practice.FlourG), "is more than 0");
        Require(kitchen.Practice.HydrationPct.Low > 0, nameof(kitchen.Practice.HydrationPct), "is more than 0");
        Require(kitchen.Practice.YeastPct.Low > 0, nameof(kitchen.Practice.YeastPct), "is more than 0");
    }

    private static void Require(bool holds, string setting, string rule)
    {
        if (!holds)
        {
            throw new ArgumentException($"The virtual kitchen's {setting} {rule}.");
        }
    }
}
