# SPDX-License-Identifier: GPL-3.0-or-later
"""The second opinion held to the reference tables (tests/data/reference, made with PHREEQC), and to itself:
an opinion that finds nothing wrong in a spoilt plan is no test."""

import copy
import csv
import unittest
from dataclasses import replace
from pathlib import Path

from chemistry import (ALKALINITY, BORON, CACO3, CHLORINE, CYANURIC, SALT, Water, carbon_for, hypochlorous,
                       in_air, ph_of, saturation_index)
from doses import BRINGS, shelf
from opinion import Opinion
from order import faults_of
from visits import visit

TESTS = Path(__file__).resolve().parent.parent
NAMES = {"HCl": "hydrochloric_acid", "NaHSO4": "sodium_bisulfate", "NaHCO3": "sodium_bicarbonate",
         "Na2CO3": "sodium_carbonate", "CaCl2": "calcium_chloride", "NaOCl": "sodium_hypochlorite",
         "Ca(OCl)2": "calcium_hypochlorite", "borax_pentahydrate": "borax"}
OWN = {"NaOH": {"alkalinity": 1}, "CO2": {"carbon": 1}}


def rows(name):
    with open(TESTS / "data" / "reference" / name, encoding="utf-8") as file:
        file.readline()
        yield from csv.DictReader(file)


def number(row, *names):
    for name in names:
        if row.get(name):
            return float(row[name])
    return 0.0


def water_of(row):
    """The water a row starts with; background is told as NaCl, hardness comes as chloride."""
    get = lambda name: number(row, "start_" + name, name) * 1e-3
    hardness = (get("calcium_hardness_mg_l_caco3") + get("magnesium_hardness_mg_l_caco3")) / CACO3
    water = Water(alkalinity=get("total_alkalinity_mg_l_caco3") / ALKALINITY, calcium=hardness,
                  cyanurate=get("cyanuric_acid_mg_l") / CYANURIC, borate=get("borate_mg_l_b") / BORON,
                  chlorine=get("free_chlorine_mg_l_cl2") / CHLORINE, sulfate=get("sulfate_mg_l") / 96.06,
                  chloride=get("background_nacl_mg_l") / SALT + 2 * hardness)
    celsius = number(row, "temperature_c")
    return replace(water, carbon=carbon_for(water, number(row, "start_ph", "ph"), celsius))


def poured(water, name, mmol, celsius):
    if name == "aeration":
        return replace(water, carbon=carbon_for(water, in_air(water, celsius), celsius))
    brings = OWN.get(name) or BRINGS[NAMES.get(name, name)]
    return water.plus(**{total: n * mmol * 1e-3 for total, n in brings.items()})


class Tables(unittest.TestCase):
    def test_ph_after_a_dose(self):
        """Every row within the pH that the plans are held to; magnesium stands for calcium here."""
        differences = []
        for row in rows("dosing_response_open.csv"):
            celsius, water = number(row, "temperature_c"), water_of(row)
            for i in "12":
                if row["addition_" + i]:
                    water = poured(water, row["addition_" + i], number(row, f"amount_{i}_mmol_kgw"), celsius)
            end, told = ph_of(water, celsius), number(row, "end_ph")
            differences.append(abs(end - told))
            self.assertAlmostEqual(end, told, delta=0.02 if 6.8 < told < 8.5 else 0.03, msg=row["id"])
        self.assertEqual(len(differences), 235)
        self.assertLess(sum(differences) / len(differences), 0.003)

    def test_titration_curves(self):
        for row in rows("buffer_curve_open.csv"):
            if row["titrant"]:
                celsius = number(row, "temperature_c")
                water = poured(water_of(row), row["titrant"], number(row, "added_mmol_kgw"), celsius)
                self.assertAlmostEqual(ph_of(water, celsius), number(row, "ph"), delta=0.03, msg=row["id"])

    def test_hypochlorous_acid(self):
        """At 25 C and by temperature; Davies alone, so a few percent where the water is salty."""
        for row in rows("free_chlorine_speciation_open.csv"):
            ours = hypochlorous(water_of(row), number(row, "ph"), number(row, "temperature_c"))
            told = number(row, "hocl_mg_l_cl2")
            self.assertAlmostEqual(ours, told, delta=0.04 * told + 1e-5, msg=row["id"])

    def test_saturation_index(self):
        for row in rows("calcite_saturation_open.csv"):
            ph, magnesium = number(row, "ph"), number(row, "magnesium_hardness_mg_l_caco3")
            if not 7 <= ph <= 8.3 or number(row, "sulfate_mg_l") > 300 or magnesium:
                continue
            ours = saturation_index(water_of(row), ph, number(row, "temperature_c"))
            self.assertAlmostEqual(ours, number(row, "si_calcite"), delta=0.05, msg=row["id"])


class Spoilt(unittest.TestCase):
    """A plan told by hand, right; then each number and the order spoilt in turn."""

    def setUp(self):
        self.visit = {"id": "V-INVENTED", "sample_temperature_c": 25, "at_home": [],
                      "vessel": {"kind": "pool", "place": "outdoor", "sanitizer": "chlorine", "volume_m3": 50,
                                 "water_temperature_c": 27},
                      "readings": []}
        self.readings = {"ph": 7.8, "total_alkalinity": 100, "calcium_hardness": 300, "free_chlorine": 1,
                         "cyanuric_acid": 0}
        self.visit["readings"] = [{"analyte": a, "value": v} for a, v in self.readings.items()]
        acid, bleach = 5.0, 2 * 50 / CHLORINE  # mol: -5.0 mg/L of alkalinity, and 2 mg/L of chlorine
        step = lambda order, chemical, product, mol, amount, unit, start: {
            "order": order, "action": "add", "chemical": chemical, "product": product, "active_mol": mol,
            "amount": {"value": amount, "unit": unit}, "start_h": start, "wait_h": 8, "portions": 1,
            "portion_gap_h": 0}
        self.plan = {"swim": {"now": "yes"}, "retest": {"after_h": 24}, "steps": [
            step(1, "hydrochloric_acid", "muriatic_acid_31", acid, acid / 10.006 * 1000, "mL", 0),
            step(2, "sodium_hypochlorite", "liquid_chlorine_125", bleach, 0.8, "L", 10)]}
        water = self.opinion().water.plus(alkalinity=-acid / 50e3, chloride=acid / 50e3)
        first, second = self.plan["steps"]
        first["after"] = {"ph": ph_of(water, 25), "total_alkalinity": 95.0, "free_chlorine": 1.0}
        water = water.plus(alkalinity=2e-3 / CHLORINE, chlorine=2e-3 / CHLORINE)
        second["after"] = {"ph": ph_of(water, 25), "total_alkalinity": 96.4, "free_chlorine": 3.0}

    def opinion(self):
        products = shelf(TESTS.parent / "station" / "shelf" / "catalogue")
        return Opinion("invented", self.visit, self.readings, None, products)

    def faults(self, plan):
        return self.opinion().follow(plan).faults + faults_of(self.visit, plan)

    def test_a_right_plan_passes(self):
        self.assertEqual(self.faults(self.plan), [])

    def test_each_spoilt_number_is_found(self):
        for keys, factor in (((0, "active_mol"), 1.05), ((0, "amount", "value"), 1.03),
                             ((0, "after", "ph"), 1.005), ((0, "after", "total_alkalinity"), 0.97),
                             ((1, "after", "free_chlorine"), 1.03), ((1, "amount", "value"), 0.8)):
            plan = copy.deepcopy(self.plan)
            place = plan["steps"][keys[0]]
            for key in keys[1:-1]:
                place = place[key]
            place[keys[-1]] *= factor
            self.assertNotEqual(self.faults(plan), [], keys)

    def test_a_spoilt_order_is_found(self):
        for change in ({"start_h": 2}, {"chemical": "cyanuric_acid", "order": 3}, {"order": 1}):
            plan = copy.deepcopy(self.plan)
            plan["steps"][1] |= change
            self.assertNotEqual(faults_of(self.visit, plan), [], change)
        hot = copy.deepcopy(self.plan)
        hot["steps"][1]["after"]["free_chlorine"] = 9
        hot["swim"] = {"now": "no", "not_before_h": 14}
        self.assertNotEqual(faults_of(self.visit, hot), [])

    def test_visits_are_the_same_for_a_seed(self):
        self.assertEqual(visit(7, 3), visit(7, 3))
        self.assertNotEqual(visit(7, 3), visit(7, 4))


if __name__ == "__main__":
    unittest.main()
