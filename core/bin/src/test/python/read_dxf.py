"""Reads every DXF file of a folder with ezdxf and prints its name, cut area and number of holes."""
import math
import pathlib
import sys

import ezdxf


def points(entity):
    """An entity as a list of points, arcs by short chords."""
    kind = entity.dxftype()
    if kind == "LINE":
        return [entity.dxf.start, entity.dxf.end]
    if kind == "ARC":
        return list(entity.flattening(1e-5))
    raise ValueError(f"{kind} on a cutting layer")


def near(one, other):
    return math.hypot(one[0] - other[0], one[1] - other[1]) < 1e-3


def loops(entities):
    """Areas of the closed paths that the entities make, end to end."""
    areas = []
    path = []
    for entity in entities:
        if entity.dxftype() == "CIRCLE":
            areas.append(math.pi * entity.dxf.radius**2)
            continue
        piece = points(entity)
        if not path:
            path = piece
        elif near(path[-1], piece[0]):
            path += piece[1:]
        elif near(path[-1], piece[-1]):
            path += piece[::-1][1:]
        elif len(path) == len(piece) or near(path[0], piece[0]):
            path = path[::-1] + piece[1:]
        elif near(path[0], piece[-1]):
            path = path[::-1] + piece[::-1][1:]
        else:
            raise ValueError("a path is broken")
        if near(path[0], path[-1]):
            area = sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(path, path[1:])) / 2
            areas.append(abs(area))
            path = []
    if path:
        raise ValueError("a path is open")
    return areas


for file in sorted(pathlib.Path(sys.argv[1]).glob("*.dxf")):
    document = ezdxf.readfile(file)
    if document.dxfversion != "AC1015":
        raise ValueError(f"{file} is not release 2000")
    # What the file says its numbers mean ($INSUNITS), and what its name says.
    mm = {1: 25.4, 4: 1.0}[document.units]
    if not file.stem.endswith({1: "-inch", 4: "-mm"}[document.units]):
        raise ValueError(f"{file} does not say its units in its name")
    space = document.modelspace()
    outer = loops([e for e in space if e.dxf.layer == "CUT_OUTER"])
    inner = loops([e for e in space if e.dxf.layer == "CUT_INNER"])
    print(file.stem.rsplit("-", 1)[0], repr((sum(outer) - sum(inner)) * mm**2), len(inner))
