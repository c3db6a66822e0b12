namespace BakeInsights;

/// <summary>Published water contents of ingredients.</summary>
/// <remarks>
/// Flour has none here: its own 11 to 13 % of moisture is not counted in hydration (the trade's convention), neither
/// in the stated nor in the effective one.
/// </remarks>
public static class WaterContents
{
    private const string Usda = "USDA National Nutrient Database for Standard Reference, composition of foods";

    /// <summary>Water, all of it.</summary>
    public static WaterContent Water { get; } = new(100, "by definition");

    /// <summary>An ingredient taken to bring no water.</summary>
    public static WaterContent None { get; } = new(0, "taken as dry");

    /// <summary>Whole milk.</summary>
    public static WaterContent WholeMilk { get; } = new(88.13, Usda + ", 01077 whole milk");

    /// <summary>Milk with 2 % fat.</summary>
    public static WaterContent LowFatMilk { get; } = new(89.21, Usda + ", milk with 2 % fat");

    /// <summary>Skim milk.</summary>
    public static WaterContent SkimMilk { get; } = new(90.84, Usda + ", 01085 skim milk");

    /// <summary>Cultured low-fat buttermilk.</summary>
    public static WaterContent Buttermilk { get; } = new(90.13, Usda + ", cultured low-fat buttermilk");

    /// <summary>Heavy cream.</summary>
    public static WaterContent HeavyCream { get; } = new(57.71, Usda + ", heavy cream");

    /// <summary>Plain yoghurt of whole milk.</summary>
    public static WaterContent Yoghurt { get; } = new(87.90, Usda + ", plain yoghurt of whole milk");

    /// <summary>Nonfat dry milk.</summary>
    public static WaterContent NonfatDryMilk { get; } = new(3.16, Usda + ", nonfat dry milk");

    /// <summary>Whole egg without the shell.</summary>
    public static WaterContent WholeEgg { get; } = new(76.15, Usda + ", 01123 whole egg");

    /// <summary>White of egg.</summary>
    public static WaterContent EggWhite { get; } = new(87.57, Usda + ", egg white");

    /// <summary>Yolk of egg.</summary>
    public static WaterContent EggYolk { get; } = new(52.31, Usda + ", egg yolk");

    /// <summary>Unsalted butter.</summary>
    public static WaterContent UnsaltedButter { get; } = new(17.94, Usda + ", 01145 unsalted butter");

    /// <summary>Salted butter.</summary>
    public static WaterContent SaltedButter { get; } = new(15.87, Usda + ", 01001 salted butter");

    /// <summary>Margarine with 80 % fat.</summary>
    public static WaterContent Margarine { get; } = new(16.52, Usda + ", 80 % margarine");

    /// <summary>Oil.</summary>
    public static WaterContent Oil { get; } = new(0, Usda + ", oils");

    /// <summary>Honey.</summary>
    public static WaterContent Honey { get; } = new(17.10, Usda + ", 19296 honey");

    /// <summary>Molasses.</summary>
    public static WaterContent Molasses { get; } = new(21.87, Usda + ", molasses");

    /// <summary>Malt syrup.</summary>
    public static WaterContent MaltSyrup { get; } = new(21.10, Usda + ", malt syrup");

    /// <summary>Granulated sugar.</summary>
    public static WaterContent Sugar { get; } = new(0.02, Usda + ", granulated sugar");

    /// <summary>Brown sugar.</summary>
    public static WaterContent BrownSugar { get; } = new(1.34, Usda + ", brown sugar");

    /// <summary>Table salt.</summary>
    public static WaterContent Salt { get; } = new(0.20, Usda + ", table salt");

    /// <summary>Raisins.</summary>
    public static WaterContent Raisins { get; } = new(15.43, Usda + ", raisins");

    private static readonly WaterContent FreshYeast = new(69.00, Usda + ", 18374 compressed yeast");

    private static readonly WaterContent DryYeast = new(5.08, Usda + ", 18375 active dry yeast");

    /// <summary>Baker's yeast. For instant yeast the figure of active dry stands in: none is published for it.</summary>
    public static WaterContent Yeast(YeastKind kind) => kind == YeastKind.Fresh ? FreshYeast : DryYeast;
}
