# SPDX-License-Identifier: GPL-3.0-or-later
"""Invented household visits of every kind of water and occasion, by a seed."""

from random import Random

KINDS = ("chlorine outdoors, stabilised", "chlorine outdoors, none", "salt cell", "bromine pool",
         "bromine spa", "biguanide", "indoor", "chlorine spa", "swim spa", "plunge", "new plaster fill",
         "opening with metals",
         "closing", "after a storm", "green or cloudy", "stabiliser far too high", "borate pool",
         "chlorine too high")


class Draw:
    def __init__(self, seed):
        self.random = Random(seed)

    def of(self, low, high, digits=1):
        return round(self.random.uniform(low, high), digits)

    def chance(self, share):
        return self.random.random() < share

    def one(self, *things):
        return self.random.choice(things)


def vessel_of(d, kind, sanitizer, place="outdoor", surface=None):
    pool = kind == "pool"
    volume = {"pool": (15, 110), "swim_spa": (4, 9), "spa": (0.7, 2.2), "plunge": (0.5, 2)}[kind]
    celsius = {"pool": (14, 32), "swim_spa": (26, 34), "spa": (34, 39.5), "plunge": (5, 15)}[kind]
    vessel = {"id": "W-1", "kind": kind, "use": "household", "place": place,
              "surface": surface or (d.one("plaster", "tile", "vinyl", "fibreglass") if pool else "acrylic"),
              "in_ground": pool and d.chance(0.8), "volume_m3": d.of(*volume, 2),
              "volume_relative_sd": d.of(0.02, 0.12, 3), "sanitizer": sanitizer,
              "previous_sanitizer": sanitizer, "water_temperature_c": d.of(*celsius)}
    if vessel["surface"] == "plaster":
        vessel["plaster_age_days"] = d.random.randint(60, 3000)
    if d.chance(0.6):
        vessel["turnover_h"] = d.of(5, 10) if pool else d.of(0.3, 1)
    return vessel


def balance_of(d, hardness=(80, 450)):
    wild = d.chance(0.25)
    return {"ph": d.of(6.7, 8.6, 2) if wild else d.of(7.0, 8.2, 2),
            "total_alkalinity": d.of(30, 230, 0) if wild else d.of(50, 150, 0),
            "calcium_hardness": d.of(*hardness, 0)}


def chlorine_of(d, high, combined, none=0.12):
    free = 0.0 if d.chance(none) else d.of(0.3, high)
    return {"free_chlorine": free, "total_chlorine": round(free + d.of(0, combined), 1)}


def fill_of(d):
    return {"ph": d.of(7.0, 8.2, 2), "total_alkalinity": d.of(40, 160, 0),
            "calcium_hardness": d.of(20, 250, 0)}


def water_of(d, kind):
    """(vessel, readings, occasion, signs) of a kind of water."""
    if kind == "salt cell":
        return (vessel_of(d, "pool", "salt_chlorine"),
                balance_of(d, (100, 420)) | chlorine_of(d, 4.5, 0.4)
                | {"cyanuric_acid": d.of(25, 95, 0), "salt": d.of(2200, 3900, 0)}, "routine", [])
    if kind in ("bromine pool", "bromine spa"):
        spa = kind == "bromine spa"
        readings = balance_of(d, (80, 280)) | {"total_bromine": 0.0 if d.chance(0.1) else d.of(0.5, 8)}
        return vessel_of(d, "spa" if spa else "pool", "bromine"), readings, "routine", []
    if kind == "biguanide":
        return (vessel_of(d, "pool", "biguanide"),
                balance_of(d) | {"biguanide": d.of(10, 55, 0), "peroxide": d.of(0, 60, 0)}, "routine", [])
    if kind == "indoor":
        readings = balance_of(d) | chlorine_of(d, 4, 0.9)
        return vessel_of(d, "pool", "chlorine", "indoor"), readings, "routine", []
    if kind == "chlorine spa":
        readings = balance_of(d, (60, 300)) | chlorine_of(d, 6, 0.4) | {"cyanuric_acid": d.of(0, 45, 0)}
        return vessel_of(d, "spa", "chlorine"), readings, "routine", []
    if kind == "swim spa":
        readings = balance_of(d, (60, 300)) | chlorine_of(d, 6, 0.4) | {"cyanuric_acid": d.of(0, 70, 0)}
        return vessel_of(d, "swim_spa", "chlorine"), readings, "routine", []
    if kind == "plunge":
        place = d.one("outdoor", "outdoor", "indoor")
        readings = balance_of(d) | chlorine_of(d, 4, 0.4)
        return vessel_of(d, "plunge", "chlorine", place), readings, "routine", []
    return pool_of(d, kind)


def pool_of(d, kind):
    vessel = vessel_of(d, "pool", "chlorine", surface="plaster" if kind == "new plaster fill" else None)
    readings = balance_of(d) | chlorine_of(d, 4.5, 0.45)
    readings["cyanuric_acid"] = d.of(20, 80, 0)
    occasion, signs = "routine", []
    if kind == "chlorine outdoors, none":
        readings["cyanuric_acid"] = 0.0
    if kind == "new plaster fill":
        vessel["plaster_age_days"] = d.random.randint(0, 27)
        readings |= {"cyanuric_acid": 0.0, "free_chlorine": d.of(0, 0.6), "ph": d.of(7.2, 8.6, 2)}
        readings["total_chlorine"] = readings["free_chlorine"]
        occasion = "new_fill"
    if kind == "opening with metals":
        readings |= {"iron": d.of(0.1, 0.9, 2), "copper": d.of(0, 0.5, 2), "free_chlorine": 0.0,
                     "total_chlorine": 0.1}
        occasion = "opening"
    if kind == "closing":
        occasion = "closing"
    if kind == "after a storm":
        readings |= {"free_chlorine": d.of(0, 1), "total_alkalinity": d.of(40, 90, 0)}
        readings["total_chlorine"] = round(readings["free_chlorine"] + d.of(0, 0.8), 1)
        occasion, signs = "after_storm", [d.one("cloudy", "green_water")]
    if kind == "green or cloudy":
        readings |= chlorine_of(d, 1.5, 1.4, 0.4)
        occasion, signs = "trouble", [d.one("cloudy", "green_water", "slimy_walls", "strong_smell")]
    if kind == "stabiliser far too high":
        readings["cyanuric_acid"] = d.of(95, 160, 0)
        if d.chance(0.5):
            readings["calcium_hardness"] = d.of(600, 900, 0)
        signs = ["tablets_in_use"] if d.chance(0.5) else []
    if kind == "borate pool":
        readings["borate"] = d.of(15, 50, 0)
    if kind == "chlorine too high":
        readings["free_chlorine"] = d.of(5.5, 9)
        readings["total_chlorine"] = round(readings["free_chlorine"] + 0.2, 1)
    return vessel, readings, occasion, signs


def at_home(d, vessel):
    have = []
    if d.chance(0.3):
        have.append({"chemical": "hydrochloric_acid", "assay": "14.5 % by weight",
                     "amount": {"value": d.of(0.3, 8), "unit": "L"}})
    if d.chance(0.2):
        have.append({"chemical": "sodium_bicarbonate", "assay": "95 % by weight",
                     "amount": {"value": d.of(0.5, 10), "unit": "kg"}})
    if vessel["sanitizer"] in ("chlorine", "salt_chlorine") and d.chance(0.2):
        have.append({"chemical": "sodium_hypochlorite", "assay": "8 % trade",
                     "amount": {"value": d.of(1, 20), "unit": "L"}})
    return have


def diluted(analyte, value):
    """A bottle far over the range of its test is read diluted, as the counter asks."""
    most = {"cyanuric_acid": 80, "calcium_hardness": 400, "free_chlorine": 5, "total_chlorine": 5,
            "total_alkalinity": 200}
    return {"dilution": 4} if value > most.get(analyte, 1e9) else {}


def rows(values):
    return [{"analyte": a, "value": v, "method": "photometer"} | diluted(a, v) for a, v in values.items()]


def visit(number, seed):
    """(kind, visit of the contract, readings by analyte, readings of the tap or None)."""
    kind = KINDS[number % len(KINDS)]
    d = Draw(seed * 100003 + number)
    vessel, readings, occasion, signs = water_of(d, kind)
    if vessel["sanitizer"] != "salt_chlorine" and d.chance(0.2):
        readings["tds"] = d.of(1200, 2600, 0)
    fill = fill_of(d) if d.chance(0.7) else None
    out = {"format": "brimline-visit/1", "id": f"V-INVENTED-{number}", "bottle": f"B-{number:04d}",
           "taken_at": "2026-06-14T08:10:00-05:00", "tested_at": "2026-06-14T09:02:00-05:00",
           "home_at": f"2026-06-14T{d.one('17:30', '10:00', '21:40')}:00-05:00",
           "occasion": occasion, "customer": {"id": "C-1", "name": "Invented Customer", "units": "metric"},
           "vessel": vessel, "readings": rows(readings), "sample_temperature_c": d.of(18, 27),
           "signs": signs, "at_home": at_home(d, vessel)}
    if fill:
        out["fill_water"] = {"readings": rows(fill)}
    return kind, out, readings, fill
