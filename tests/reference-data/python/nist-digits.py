# Writes how many digits of the certified NIST linear regressions statsmodels gets right: the worst over all
# coefficients and their standard errors. Needs Python 3 and statsmodels (0.13 was used). Run it in this folder.
import csv
import math

import numpy
import statsmodels.api

DEGREE = {"Norris": 1, "Pontius": 2, "NoInt1": 1, "NoInt2": 1, "Filip": 10, "Longley": 0,
          "Wampler1": 5, "Wampler2": 5, "Wampler3": 5, "Wampler4": 5, "Wampler5": 5}


def digits(value, certified):
    error = abs(value - certified) / (abs(certified) or 1)
    return 15 if error == 0 else min(15, max(0, -math.log10(error)))


def rows(file):
    with open(file, newline="") as lines:
        return list(csv.DictReader(lines))


def worst(name):
    values = {row["quantity"]: float(row["value"]) for row in rows("../nist/certified.csv") if row["set"] == name}
    data = rows(f"../nist/{name}.csv")
    y = numpy.array([float(row["y"]) for row in data])
    if DEGREE[name] == 0:
        x = numpy.array([[float(row[f"x{j}"]) for j in range(1, 7)] for row in data])
    else:
        base = numpy.array([float(row["x"]) for row in data])
        x = numpy.column_stack([base ** power for power in range(1, DEGREE[name] + 1)])
    names = [f"B{j + 1}" for j in range(x.shape[1])]
    if "B0" in values:
        x, names = numpy.column_stack([numpy.ones(len(y)), x]), ["B0"] + names
    fit = statsmodels.api.OLS(y, x).fit()
    return min(min(digits(b, values[n]), digits(s, values[f"SD of {n}"]))
               for n, b, s in zip(names, fit.params, fit.bse))


with open("nist-digits-statsmodels.csv", "w") as out:
    out.write("set,digits\n")
    for name in DEGREE:
        out.write(f"{name},{math.floor(worst(name) * 10) / 10:.1f}\n")
