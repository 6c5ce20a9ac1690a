// SPDX-License-Identifier: Apache-2.0
/** Units, and the handles for progress and cancelling that all long work is given. */
package gelfront.base;
