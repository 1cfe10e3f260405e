namespace Watersown.Nutrition;

/// <summary>What can be wrong with nutrients and products.</summary>
public static class NutritionProblems
{
    public static ProblemKind NothingCarries { get; } = new("NUTRITION-001", ProblemWeight.Refuse,
        "{target} of {nutrient} is wanted, and none of the products carries {nutrient}. Add a product that does, or ask for 0.",
        "se piden {target} de {nutrient}, y ningún producto contiene {nutrient}. Agregue uno que lo contenga, o pida 0.");

    public static ProblemKind ProductTwice { get; } = new("NUTRITION-002", ProblemWeight.Refuse,
        "'{name}' stands there more than once. Give each product a name of its own.",
        "'{name}' aparece más de una vez. Dé a cada producto un nombre propio.");

    public static ProblemKind GradeTooThin { get; } = new("NUTRITION-004", ProblemWeight.Refuse,
        "{value} % of {nutrient} in '{name}' is too little to count on. Give 0, or {least} % and more.",
        "{value} % de {nutrient} en '{name}' es demasiado poco para contar con ello. Dé 0, o {least} % o más.");

    public static ProblemKind TooManyProducts { get; } = new("NUTRITION-003", ProblemWeight.Refuse,
        "{value} products were given, and at most {limit} can be compared at once. Leave out those that are not on offer.",
        "se dieron {value} productos, y se pueden comparar {limit} como máximo. Quite los que no estén a la venta.");
}
