# SPDX-License-Identifier: GPL-3.0-or-later
# How the program is compiled for a package: what Debian asks for against attacks, no path of the building machine in
# the files, and nothing in them that is never called. The calculation is compiled to be fast, the rest to be small.
add_compile_options($<IF:$<STREQUAL:$<TARGET_PROPERTY:NAME>,core>,-O2,-Os> -ffile-prefix-map=${CMAKE_SOURCE_DIR}=.
                    -ffile-prefix-map=${CMAKE_BINARY_DIR}=build -fstack-protector-strong -fstack-clash-protection
                    -fcf-protection -Wformat -Werror=format-security -U_FORTIFY_SOURCE -D_FORTIFY_SOURCE=2
                    -ffunction-sections -fdata-sections)
add_link_options(-Wl,-z,relro -Wl,-z,now -Wl,-z,pack-relative-relocs -Wl,--gc-sections
                 -Wl,--as-needed -Wl,--build-id=sha1)
set(CMAKE_POSITION_INDEPENDENT_CODE ON)
