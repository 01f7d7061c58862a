"""Takes a picture of a scene as a camera or a scanner would; knows nothing of the program.

Reads one JSON file: ground (light 0..1), layers (grey PNG or PGM files that lie on the ground, in
order, each with its dots per mm, perhaps the part of it that is cut out (dots from the left and from
above), the mm of its lower left corner, a turn in degrees about that corner, and either "wood": the light where it is black, or nothing: its own grey), back (nine
numbers: from straight pixels to mm), lens (Brown's first radial term, in half diagonals), size,
blur (pixels), lamp (share of light lost from left to right and to the corners), noise (levels),
quality (JPEG; 0 for PNG), dpi (written into the file; 0 for none), out.

Every pixel is the mean of places within it, no farther from each other than the dots of the finest
layer, each read between the dots. Fewer would move edges that lie level by a quarter of a pixel.
Tiles of the picture over which a layer is all white or all black are filled without looking.
"""
import json
import sys

import numpy as np
from PIL import Image

Image.MAX_IMAGE_PIXELS = None
LARGE, SMALL = 512, 32
scene = json.load(open(sys.argv[1]))
width, height = scene["size"]
random = np.random.default_rng(int(scene.get("seed", 1)))
back = np.array(scene["back"]).reshape(3, 3)
half = np.hypot(width, height) / 2
lens = scene.get("lens", 0)
# The share by which a bent place is nearer to the middle when straight, by its bent distance.
bent = np.linspace(0, 1.1, 5000)
straight = bent.copy()
for _ in range(60):
    straight = bent / (1 + lens * straight * straight)
shares = np.append(1, straight[1:] / bent[1:])


def light_of(srgb):
    return np.where(srgb <= 0.04045, srgb / 12.92, ((srgb + 0.055) / 1.055) ** 2.4)


def srgb_of(light):
    light = np.clip(light, 0, 1)
    return np.where(light <= 0.0031308, light * 12.92, 1.055 * light ** (1 / 2.4) - 0.055)


def places(xs, ys):
    """From the picture's pixels to mm: the lens followed back, then the view of the plane."""
    if lens != 0:
        bx = (xs - (width - 1) / 2) / half
        by = (ys - (height - 1) / 2) / half
        share = np.interp(np.hypot(bx, by), bent, shares)
        xs = bx * share * half + (width - 1) / 2
        ys = by * share * half + (height - 1) / 2
    w = back[2, 0] * xs + back[2, 1] * ys + back[2, 2]
    mx = (back[0, 0] * xs + back[0, 1] * ys + back[0, 2]) / w
    my = (back[1, 0] * xs + back[1, 1] * ys + back[1, 2]) / w
    return mx, my


class Layer:
    """A raster that lies on the table."""

    EDGE = 2

    def __init__(self, said):
        image = Image.open(said["file"])
        levels = np.asarray(image.crop(said["part"]) if "part" in said else image.convert("L"))
        self.rows, self.columns = levels.shape
        self.dots, self.at = said["dots"], said["at"]
        turn = np.radians(said.get("turn", 0))
        self.c, self.s = np.cos(turn), np.sin(turn)
        self.wood = said.get("wood")
        self.levels = np.pad(levels, self.EDGE, constant_values=255)
        grey = np.arange(256) / 255
        # Librsvg gives the share of a dot that is covered, 1 for none of it.
        self.light = grey if self.wood is not None else scene.get("paper", 0.85) * light_of(grey)
        # How many dots up to here are not the same as the one above or to the left.
        odd = np.zeros(self.levels.shape, np.int32)
        odd[1:] |= self.levels[1:] != self.levels[:-1]
        odd[:, 1:] |= self.levels[:, 1:] != self.levels[:, :-1]
        self.odd = odd.cumsum(0, out=odd).cumsum(1, out=odd)

    def dots_of(self, mx, my):
        """Dot centres lie half a dot in from the upper left; in the padded raster."""
        dx, dy = mx - self.at[0], my - self.at[1]
        px = (self.c * dx + self.s * dy) * self.dots - 0.5
        py = self.rows - (-self.s * dx + self.c * dy) * self.dots - 0.5
        return px + self.EDGE, py + self.EDGE

    def plain(self, px, py):
        """The one grey of all dots about these corners, or none where there are several."""
        x0, x1 = (np.array([px.min() - 3, px.max() + 3]).astype(int)).clip(0, None)
        y0, y1 = (np.array([py.min() - 3, py.max() + 3]).astype(int)).clip(0, None)
        if px.max() + 3 < 0 or py.max() + 3 < 0:
            return -1
        if x0 >= self.levels.shape[1] or y0 >= self.levels.shape[0]:
            return -1
        x1, y1 = min(x1, self.levels.shape[1] - 1), min(y1, self.levels.shape[0] - 1)
        if px.min() - 3 < self.EDGE or py.min() - 3 < self.EDGE:
            return None if self.wood is None or self.counted(x0, y0, x1, y1) else -1
        if px.max() + 3 > self.columns or py.max() + 3 > self.rows:
            return None if self.wood is None or self.counted(x0, y0, x1, y1) else -1
        return None if self.counted(x0, y0, x1, y1) else int(self.levels[y1, x1])

    def counted(self, x0, y0, x1, y1):
        o = self.odd
        return o[y1, x1] - o[y0, x1] - o[y1, x0] + o[y0, x0]

    def over(self, light, px, py):
        """What is seen where this lies over something that sends back this light."""
        x0 = np.floor(px).astype(np.int64)
        y0 = np.floor(py).astype(np.int64)
        fx, fy = px - x0, py - y0
        inside = (x0 >= 0) & (y0 >= 0)
        inside &= (x0 < self.levels.shape[1] - 1) & (y0 < self.levels.shape[0] - 1)
        at = np.where(inside, y0 * self.levels.shape[1] + x0, 0)
        flat = self.levels.ravel()
        below = at + self.levels.shape[1]
        dot = lambda where: self.light[flat[where]]
        upper = dot(at) * (1 - fx) + dot(at + 1) * fx
        lower = dot(below) * (1 - fx) + dot(below + 1) * fx
        value = upper * (1 - fy) + lower * fy
        if self.wood is not None:
            return np.where(inside, light * value + self.wood * (1 - value), light)
        edge = self.EDGE
        here = (px > edge - 0.5) & (py > edge - 0.5)
        here &= (px < self.columns + edge) & (py < self.rows + edge)
        return np.where(here, value, light)

    def filled(self, light, grey):
        if grey < 0:
            return light
        value = self.light[grey]
        return value if self.wood is None else light * value + self.wood * (1 - value)


layers = [Layer(said) for said in scene["layers"]]
middle = np.array([[0, 1, 0], [0, 0, 1]]) + [[(width - 1) / 2], [(height - 1) / 2]]
mx, my = places(*middle)
pixel = max(np.hypot(mx[1:] - mx[0], my[1:] - my[0]))
fine = max(2, int(np.ceil(max(layer.dots for layer in layers) * pixel - 0.1)))
picture = np.empty((height, width), np.float32)
steps = (np.arange(fine) + 0.5) / fine - 0.5
# The outline of a tile, and not its corners alone, for a lens bends its sides.
rim = np.linspace(-0.5, 0.5, 5)
rim_x = np.concatenate([rim, rim, rim * 0 - 0.5, rim * 0 + 0.5])
rim_y = np.concatenate([rim * 0 - 0.5, rim * 0 + 0.5, rim, rim])


def take(left, top, size):
    """One tile of the picture, in quarters where a layer is not the same all over it."""
    right, low = min(width, left + size), min(height, top + size)
    if right <= left or low <= top:
        return
    mx, my = places(
        rim_x * (right - left) + (left + right - 1) / 2, rim_y * (low - top) + (top + low - 1) / 2
    )
    greys = [layer.plain(*layer.dots_of(mx, my)) for layer in layers]
    if None in greys and size > SMALL:
        for x in (left, left + size // 2):
            for y in (top, top + size // 2):
                take(x, y, size // 2)
        return
    if None in greys:
        xs = (np.arange(left, right)[:, None] + steps).ravel()[None, :]
        ys = (np.arange(top, low)[:, None] + steps).ravel()[:, None]
        mx, my = places(*np.broadcast_arrays(xs, ys))
    light = float(scene["ground"])
    for layer, grey in zip(layers, greys):
        if grey is None:
            light = layer.over(light, *layer.dots_of(mx, my))
        else:
            light = layer.filled(light, grey)
    if np.ndim(light) == 2:
        light = light.reshape(low - top, fine, right - left, fine).mean((1, 3))
    picture[top:low, left:right] = light


for top in range(0, height, LARGE):
    for left in range(0, width, LARGE):
        take(left, top, LARGE)

blur = scene.get("blur", 0)
if blur > 0:
    reach = int(np.ceil(4 * blur))
    bell = np.exp(-0.5 * (np.arange(-reach, reach + 1) / blur) ** 2)
    bell = (bell / bell.sum()).astype(np.float32)
    for size, axis in ((width, 1), (height, 0)):
        pad = [(0, 0), (0, 0)]
        pad[axis] = (reach, reach)
        padded = np.pad(picture, pad, mode="edge")
        picture = np.zeros_like(picture)
        for i, share in enumerate(bell):
            picture += share * (padded[:, i : i + size] if axis else padded[i : i + size])

lamp = scene.get("lamp", 0)
if lamp > 0:
    across = np.linspace(0, 1, width, dtype=np.float32)[None, :]
    xs = ((np.arange(width) - width / 2) ** 2 / half**2).astype(np.float32)[None, :]
    ys = ((np.arange(height) - height / 2) ** 2 / half**2).astype(np.float32)[:, None]
    picture *= (1 - lamp * across) * (1 - lamp / 2 * (xs + ys))

levels = 255 * srgb_of(picture)
levels += random.standard_normal(levels.shape, np.float32) * scene.get("noise", 0)
image = Image.fromarray(np.clip(np.rint(levels), 0, 255).astype(np.uint8))
options = {}
if scene.get("dpi", 0):
    options["dpi"] = (scene["dpi"], scene["dpi"])
if scene.get("quality", 0):
    image.convert("RGB").save(scene["out"], "JPEG", quality=int(scene["quality"]), **options)
else:
    image.save(scene["out"], **options)
