# SPDX-License-Identifier: GPL-3.0-or-later
"""What a mole of each chemical brings, by its reaction, and how many moles a label's percent holds."""

import tomllib
from pathlib import Path

from chemistry import CHLORINE

# Thiosulfate takes 1 HOCl a mole (to sulfur and sulfate) or 4 (to sulfate); trade tables use 1.9 g of the
# pentahydrate a gram of chlorine, from memory: a share of the second reaction.
THIOSULFATE = 248.18 / 1.9 / CHLORINE
FULL = (THIOSULFATE - 1) / 3

# Moles a mole of the anhydrous formula, chlorine and bromine counted as present.
BRINGS = {
    "hydrochloric_acid": {"alkalinity": -1, "chloride": 1},
    "sodium_bisulfate": {"alkalinity": -1, "sulfate": 1},
    "sodium_bicarbonate": {"alkalinity": 1, "carbon": 1},
    "sodium_carbonate": {"alkalinity": 2, "carbon": 1},
    "sodium_sesquicarbonate": {"alkalinity": 3, "carbon": 2},
    "calcium_chloride": {"calcium": 1, "chloride": 2},
    "cyanuric_acid": {"cyanurate": 1},
    "sodium_hypochlorite": {"alkalinity": 1, "chlorine": 1},
    "calcium_hypochlorite": {"alkalinity": 2, "calcium": 1, "chlorine": 2},
    "dichlor": {"alkalinity": 1, "cyanurate": 1, "chlorine": 2},
    "trichlor": {"cyanurate": 1, "chlorine": 3},
    "potassium_monopersulfate": {"alkalinity": -1, "sulfate": 1},
    "hydrogen_peroxide": {},  # never where there is chlorine to take
    "sodium_bromide": {},
    "bcdmh": {"bromine": 2, "chloride": 1},
    "sodium_thiosulfate": {"alkalinity": -THIOSULFATE - 2 * FULL, "chlorine": -THIOSULFATE,
                           "chloride": THIOSULFATE, "sulfate": 1 + FULL},
    "sodium_sulfite": {"alkalinity": -1, "chlorine": -1, "chloride": 1, "sulfate": 1},
    "ascorbic_acid": {"alkalinity": -1, "chlorine": -1, "chloride": 1},
    "boric_acid": {"borate": 1},
    "borax": {"alkalinity": 2, "borate": 4},
    "sodium_chloride": {"chloride": 1},
    "lanthanum_chloride": {"alkalinity": -2, "chloride": 2},
}
BY_LABEL = {"sequestrant", "polyquat", "phmb", "clarifier", "alum"}

# g/mol of the anhydrous formula; atomic weights of IUPAC 2021, from memory
MASS = {
    "hydrochloric_acid": 36.46, "sodium_bisulfate": 120.05, "sodium_bicarbonate": 84.01,
    "sodium_carbonate": 105.99, "sodium_sesquicarbonate": 190.00, "calcium_chloride": 110.98,
    "cyanuric_acid": 129.08, "sodium_hypochlorite": 74.44, "calcium_hypochlorite": 142.98,
    "dichlor": 219.94, "trichlor": 232.40, "potassium_monopersulfate": 152.16, "hydrogen_peroxide": 34.01,
    "sodium_bromide": 102.89, "bcdmh": 241.47, "sodium_thiosulfate": 158.10, "sodium_sulfite": 126.04,
    "ascorbic_acid": 176.12, "boric_acid": 61.83, "borax": 201.22, "sodium_chloride": 58.44,
    "lanthanum_chloride": 245.26,
}

# kg/L of the liquids by percent of weight: 20 degrees Baume acid and half strength, 27 % peroxide
DENSITY = {("hydrochloric_acid", 31.45): 1.160, ("hydrochloric_acid", 14.5): 1.070,
           ("hydrogen_peroxide", 27.0): 1.10}


def shelf(folder):
    """The products as sold, by id: labels only (percent, how it is meant, density)."""
    products = {}
    for file in sorted(Path(folder).glob("*.toml")):
        product = tomllib.loads(file.read_text(encoding="utf-8"))
        products[product["id"]] = product
    return products


def moles_in(chemical, percent, strength, base, density):
    """Moles in `base` litres or kilograms of a product of this label."""
    if strength == "trade":  # grams of available chlorine in 100 mL
        return base * percent * 10 / CHLORINE / BRINGS[chemical]["chlorine"]
    grams = base * 1000 * density * percent / 100
    if strength == "available_chlorine":
        return grams / CHLORINE / BRINGS[chemical]["chlorine"]
    return grams / MASS[chemical]


def moles_of(step, products, at_home):
    """(moles by the label, what was poured) of a step; None where the label stands nowhere."""
    chemical, amount = step["chemical"], step["amount"]
    base = amount["value"] / (1000 if amount["unit"] in ("mL", "g") else 1)
    liquid = amount["unit"] in ("mL", "L")
    label = None
    if step.get("product"):
        product = products[step["product"]]
        label = product["percent"], product["strength"], product.get("density")
    for have in at_home:
        if label is None and have["chemical"] == chemical:
            words = have["assay"].split()
            strength = "trade" if "trade" in words else "weight"
            label = float(words[0]), strength, None
    if label is None:
        return None
    percent, strength, density = label
    if density is None:
        density = DENSITY.get((chemical, percent), 1.0) if liquid else 1.0
    return moles_in(chemical, percent, strength, base, density)
