# SPDX-License-Identifier: GPL-3.0-or-later
"""A small water model of its own: carbonate, cyanurate, borate, chlorine and water in equilibrium.

Written from published constants for the tests alone; it shares nothing with the engine. One activity
model (Davies) and only the pairs of calcium and sodium, so it is the rougher of the two; how far it is
from the reference tables is what check_tables.py holds it to.

Amounts are mol per kilogram of water, a litre counted as a kilogram; temperature in degrees Celsius.
Total alkalinity is the charge excess over H2CO3, H3Cy, B(OH)3, HOCl and H2O.
"""

from dataclasses import dataclass, replace
from math import log10, sqrt

# g/mol; abridged standard atomic weights (IUPAC 2021), from memory
CACO3, ALKALINITY, CHLORINE, BROMINE = 100.087, 100.087 / 2, 70.906, 159.808
CYANURIC, BORON, SALT = 129.075, 10.81, 58.443
BICARBONATE, CALCIUM, SODIUM, CHLORIDE = 61.017, 40.078, 22.990, 35.453


def carbonic_constants(kelvin):
    """log10 K1, K2, 0-90 C: Plummer and Busenberg 1982, Geochim. Cosmochim. Acta 46, 1011."""
    k1 = -356.3094 - 0.06091964 * kelvin + 21834.37 / kelvin + 126.8339 * log10(kelvin) - 1684915 / kelvin**2
    k2 = -107.8871 - 0.03252849 * kelvin + 5151.79 / kelvin + 38.92561 * log10(kelvin) - 563713.9 / kelvin**2
    return k1, k2


def calcium_pairs(kelvin):
    """log10 K of CaHCO3+ and CaCO3(aq): Plummer and Busenberg 1982."""
    with_bicarbonate = 1209.12 + 0.31294 * kelvin - 34765.05 / kelvin - 478.782 * log10(kelvin)
    with_carbonate = -1228.732 - 0.299444 * kelvin + 35512.75 / kelvin + 485.818 * log10(kelvin)
    return with_bicarbonate, with_carbonate


# log10 K of CaSO4(aq), NaHCO3(aq) and NaCO3-, 25 C: Truesdell and Jones 1974 (WATEQ), from memory
CALCIUM_SULFATE, SODIUM_BICARBONATE, SODIUM_CARBONATE = 2.30, -0.25, 1.27


def henry_constant(kelvin):
    """log10 of mol/kg and atmosphere of CO2: Plummer and Busenberg 1982."""
    return 108.3865 + 0.01985076 * kelvin - 6919.53 / kelvin - 40.45154 * log10(kelvin) + 669365 / kelvin**2


def water_constant(kelvin):
    """log10 Kw, 0-60 C: Harned and Owen 1958, from memory."""
    return 6.0875 - 4470.99 / kelvin - 0.01706 * kelvin


def boric_constant(kelvin):
    """log10 Ka of boric acid: Owen 1934, J. Am. Chem. Soc. 56, 1695, from memory; 9.235 at 25 C."""
    return 3.305 - 2237.94 / kelvin - 0.016883 * kelvin


def hypochlorous_constant(kelvin):
    """log10 Ka of hypochlorous acid: Morris 1966, J. Phys. Chem. 70, 3798; 7.537 at 25 C."""
    return 10.0686 - 3000 / kelvin - 0.0253 * kelvin


# log10 Ka of hypobromous acid, 25 C: the usual handbook value, from memory
HYPOBROMOUS = -8.65

# Cyanurate and its chlorinated forms, 25 C: O'Brien, Morris and Butler 1974, from memory
CYANURIC_ACID = (-6.88, -11.40)
# H2ClCy = H3Cy + HOCl; HCl2Cy = H2ClCy + HOCl; and the acidities of both (-3.75, -5.33, -10.12)
MONOCHLORO, DICHLORO = -4.07, -2.93
MONOCHLORO_ACID, MONOCHLORO_SECOND, DICHLORO_ACID = -5.33, -10.12, -3.75


def debye_a(celsius):
    """Debye-Hueckel slope for log10, from the permittivity of water by Malmberg and Maryott 1956."""
    permittivity = 87.740 - 0.4008 * celsius + 9.398e-4 * celsius**2 - 1.410e-6 * celsius**3
    return 1.8248e6 * sqrt(0.9971) / (permittivity * (celsius + 273.15)) ** 1.5


def davies(celsius, strength):
    """log10 of the activity coefficient of a charge of one: Davies 1962."""
    root = sqrt(strength)
    return -debye_a(celsius) * (root / (1 + root) - 0.3 * strength)


@dataclass(frozen=True)
class Water:
    """The conserved amounts of a water, mol/kg."""

    alkalinity: float
    carbon: float = 0.0
    calcium: float = 0.0
    cyanurate: float = 0.0
    borate: float = 0.0
    chlorine: float = 0.0
    bromine: float = 0.0
    chloride: float = 0.0
    sulfate: float = 0.0

    def plus(self, **moles):
        return replace(self, **{name: getattr(self, name) + value for name, value in moles.items()})

    def mixed(self, fill, fraction):
        """This water with `fraction` of it replaced by `fill`."""
        return Water(**{
            name: (1 - fraction) * getattr(self, name) + fraction * getattr(fill, name)
            for name in self.__dataclass_fields__
        })

    def sodium(self):
        """What closes the charge balance."""
        return max(0.0, self.alkalinity + self.chloride + 2 * self.sulfate - 2 * self.calcium)

    def strength(self):
        """Ionic strength, with all alkalinity counted as of one charge."""
        return 0.5 * (self.sodium() + self.alkalinity + self.chloride
                      + 4 * self.calcium + 4 * self.sulfate)


def activities(celsius, strength):
    one = davies(celsius, strength)
    return 10**one, 10 ** (4 * one)


def chlorinated(water, hydrogen, one, celsius):
    """(alkalinity of cyanurate and chlorine, free HOCl): the chlorine balance solved by halving."""
    acid = 10 ** hypochlorous_constant(celsius + 273.15) / (hydrogen * one)  # OCl- over HOCl
    two = one**4
    first = 10 ** CYANURIC_ACID[0] / (hydrogen * one)
    second = first * 10 ** CYANURIC_ACID[1] * one / (hydrogen * two)
    mono = 10 ** MONOCHLORO_ACID / (hydrogen * one)
    mono2 = mono * 10 ** MONOCHLORO_SECOND * one / (hydrogen * two)
    di = 10 ** DICHLORO_ACID / (hydrogen * one)
    bare, single, double = 1 + first + second, 1 + mono + mono2, 1 + di

    def rings(hocl):
        """moles of each ring per mole of H3Cy."""
        k1 = hocl / 10**MONOCHLORO
        return bare, k1 * single, k1 * hocl / 10**DICHLORO * double

    def held(hocl):
        r0, r1, r2 = rings(hocl)
        return hocl * (1 + acid) + water.cyanurate * (r1 + 2 * r2) / (r0 + r1 + r2)

    low, high = 0.0, water.chlorine
    for _ in range(60):
        middle = (low + high) / 2
        low, high = (middle, high) if held(middle) < water.chlorine else (low, middle)
    hocl = (low + high) / 2
    r0, r1, r2 = rings(hocl)
    k1 = hocl / 10**MONOCHLORO
    charge = (first + 2 * second) + k1 * (mono + 2 * mono2) + k1 * hocl / 10**DICHLORO * di
    return water.cyanurate * charge / (r0 + r1 + r2) + hocl * acid, hocl


def without_carbon(water, ph, celsius):
    """Alkalinity that is not carbonate's, at this pH."""
    one, _ = activities(celsius, water.strength())
    kelvin, hydrogen = celsius + 273.15, 10**-ph  # an activity
    hydroxide = 10 ** water_constant(kelvin) / (hydrogen * one)
    boric = 10 ** boric_constant(kelvin) / (hydrogen * one)
    bromous = 10**HYPOBROMOUS / (hydrogen * one)
    ring, _ = chlorinated(water, hydrogen, one, celsius)
    return (ring + hydroxide - hydrogen / one + water.borate * boric / (1 + boric)
            + water.bromine * bromous / (1 + bromous))


class Carbonate:
    """What one CO3-- brings with it at this pH: `carbon` in all, `charge` in all, and CO2."""

    def __init__(self, water, ph, celsius):
        kelvin, hydrogen = celsius + 273.15, 10**-ph
        one, two = activities(celsius, water.strength())
        k1, k2 = carbonic_constants(kelvin)
        self.bicarbonate = hydrogen * two / (10**k2 * one)
        self.co2 = hydrogen**2 * two / 10 ** (k1 + k2)
        with_bicarbonate, with_carbonate = calcium_pairs(kelvin)
        # moles of pair for a mole of free calcium and of CO3--
        self.calcium_hco3 = 10**with_bicarbonate * two * self.bicarbonate
        self.calcium_co3 = 10**with_carbonate * two * two
        sulfate = 1 + 10**CALCIUM_SULFATE * two * two * water.sulfate
        sodium = water.sodium()
        self.sodium_hco3 = 10**SODIUM_BICARBONATE * one * one * self.bicarbonate * sodium
        self.sodium_co3 = 10**SODIUM_CARBONATE * two * sodium
        self.calcium, self.sulfate = water.calcium, sulfate

    def sums(self, co3):
        """Carbon and charge a mole of CO3--, where that much of it is free."""
        pairs = self.calcium_hco3 + self.calcium_co3
        free = self.calcium / (self.sulfate + co3 * pairs)
        carbon = 1 + self.bicarbonate + self.co2 + self.sodium_hco3 + self.sodium_co3 + free * pairs
        charge = (2 + self.bicarbonate + self.sodium_hco3 + 2 * self.sodium_co3
                  + free * (self.calcium_hco3 + 2 * self.calcium_co3))
        return carbon, charge

    def charge_of(self, carbon):
        """Charge of this much inorganic carbon, mol/kg."""
        co3 = carbon / (1 + self.bicarbonate + self.co2)
        for _ in range(25):
            co3 = carbon / self.sums(co3)[0]
        return co3 * self.sums(co3)[1]

    def carbon_of(self, charge):
        """The inorganic carbon that has this charge, mol/kg."""
        co3 = charge / (2 + self.bicarbonate)
        for _ in range(25):
            co3 = charge / self.sums(co3)[1]
        return co3 * self.sums(co3)[0]


def ph_of(water, celsius):
    """The pH at which the charges balance."""
    low, high = 3.0, 11.5
    for _ in range(50):
        ph = (low + high) / 2
        charge = Carbonate(water, ph, celsius).charge_of(water.carbon)
        if charge + without_carbon(water, ph, celsius) < water.alkalinity:
            low = ph
        else:
            high = ph
    return (low + high) / 2


def carbon_for(water, ph, celsius):
    """The inorganic carbon that gives this pH; never below nothing."""
    charge = water.alkalinity - without_carbon(water, ph, celsius)
    return Carbonate(water, ph, celsius).carbon_of(max(0.0, charge))


def in_air(water, celsius):
    """The pH once CO2 is that of the air, 10^-3.4 atmospheres."""
    co2 = 10 ** (henry_constant(celsius + 273.15) - 3.4)
    low, high = 3.0, 11.5
    for _ in range(50):
        ph = (low + high) / 2
        carbonate = Carbonate(water, ph, celsius)
        co3 = co2 / carbonate.co2
        if co3 * carbonate.sums(co3)[1] + without_carbon(water, ph, celsius) < water.alkalinity:
            low = ph
        else:
            high = ph
    return (low + high) / 2


def from_readings(readings, celsius, tap=False):
    """The water behind a bottle's readings, in mg/L, or None without pH and alkalinity."""
    get = lambda analyte: readings.get(analyte, 0.0) * 1e-3
    if "ph" not in readings or "total_alkalinity" not in readings:
        return None
    water = Water(
        alkalinity=get("total_alkalinity") / ALKALINITY,
        calcium=get("calcium_hardness") / CACO3,
        cyanurate=get("cyanuric_acid") / CYANURIC,
        borate=get("borate") / BORON,
        chlorine=get("free_chlorine") / CHLORINE,
        bromine=get("total_bromine") / BROMINE,
    )
    water = replace(water, chloride=chloride_of(readings, water, tap))
    return replace(water, carbon=carbon_for(water, readings["ph"], celsius))


def chloride_of(readings, water, tap):
    """All chloride: from the salt or the dissolved solids; 1,000 mg/L of solids where neither was read."""
    if "salt" in readings:
        return readings["salt"] * 1e-3 / SALT
    if tap and "tds" not in readings:
        return 2 * water.calcium
    solids = readings.get("tds", 1000.0) * 1e-3
    # sodium = alkalinity + chloride - 2 calcium, by charge
    ions = water.alkalinity * (BICARBONATE + SODIUM) + water.calcium * (CALCIUM - 2 * SODIUM)
    return max(0.0, (solids - ions - water.cyanurate * CYANURIC) / (SODIUM + CHLORIDE))


def saturation_index(water, ph, celsius):
    """SI of calcite, its constant by Plummer and Busenberg 1982; None without calcium."""
    if water.calcium <= 0:
        return None
    kelvin = celsius + 273.15
    _, two = activities(celsius, water.strength())
    carbonate = Carbonate(water, ph, celsius)
    charge = water.alkalinity - without_carbon(water, ph, celsius)
    if charge <= 0:
        return None
    co3 = charge / (2 + carbonate.bicarbonate)
    for _ in range(25):
        co3 = charge / carbonate.sums(co3)[1]
    free = water.calcium / (carbonate.sulfate + co3 * (carbonate.calcium_hco3 + carbonate.calcium_co3))
    solubility = -171.9065 - 0.077993 * kelvin + 2839.319 / kelvin + 71.595 * log10(kelvin)
    return log10(free * co3 * two * two) - solubility


def hypochlorous(water, ph, celsius):
    """HOCl, mg/L as Cl2."""
    one, _ = activities(celsius, water.strength())
    return chlorinated(water, 10**-ph, one, celsius)[1] * CHLORINE * 1e3
